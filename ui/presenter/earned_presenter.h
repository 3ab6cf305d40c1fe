// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "ui/presenter/books_presenter.h"

#include <optional>

namespace rw::ui {

class OwnerPresenter;

/// What the jobs of a month earned. It begins with this month and never goes beyond; nothing is asked and nothing is
/// kept while it may not be shown.
class EarnedPresenter final : public BooksPresenter {
    Q_OBJECT

public:
    EarnedPresenter(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QObject* parent = nullptr);

    [[nodiscard]] CivilDate month() const { return m_month; } ///< its first day
    [[nodiscard]] bool mayGoOn() const;                       ///< the month is before this one
    void goMonths(int months);
    [[nodiscard]] const std::optional<desk::Earned>& earned() const {
        return m_earned;
    } ///< nothing: not known, or hidden

Q_SIGNALS:
    void earnedChanged();

protected:
    void load() override;

private:
    OwnerPresenter& m_owner;
    CivilDate m_month{};
    std::optional<desk::Earned> m_earned;
    desk::CancelToken m_asked;
    bool m_followsToday = true; ///< until somebody goes to another month
};

} // namespace rw::ui
