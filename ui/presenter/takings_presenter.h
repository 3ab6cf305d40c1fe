// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "ui/presenter/books_presenter.h"

#include <optional>

namespace rw::ui {

/// What came in on a day and in its month, by way of payment. It begins today and never goes beyond.
class TakingsPresenter final : public BooksPresenter {
    Q_OBJECT

public:
    TakingsPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    [[nodiscard]] CivilDate day() const { return m_day; }
    [[nodiscard]] bool mayGoOn() const; ///< the day is before today
    void goDays(int days);
    void goMonths(int months); ///< to the same day, or the last of a shorter month
    void goToday();

    [[nodiscard]] const std::optional<desk::Takings>& ofDay() const { return m_ofDay; } ///< nothing: not known yet
    [[nodiscard]] const std::optional<desk::Takings>& ofMonth() const { return m_ofMonth; }

Q_SIGNALS:
    void takingsChanged();

protected:
    void load() override;

private:
    void goTo(CivilDate day);

    CivilDate m_day{};
    std::optional<desk::Takings> m_ofDay;
    std::optional<desk::Takings> m_ofMonth;
    desk::CancelToken m_asked;
    bool m_followsToday = true; ///< until somebody goes to another day
};

} // namespace rw::ui
