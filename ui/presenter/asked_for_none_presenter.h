// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <string>
#include <vector>

namespace rw::ui {

/// Somebody asked for a string and the shop had none of it.
class AskedForNonePresenter final : public StationPresenter {
    Q_OBJECT

public:
    AskedForNonePresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    /// Every string that is not retired, by code, with what is left of it.
    [[nodiscard]] const std::vector<desk::ShelfString>& strings() const { return m_strings; }
    /// Somebody else asks: what is written down from now on counts beside what was before.
    void begin();
    /// Writes it down, once however often it is pressed until begin().
    void writeDown(StringArticleId string);

Q_SIGNALS:
    void stringsChanged();
    void wroteDown(const StringArticle& string);
    void refused(const Refusal& why);

private:
    std::vector<desk::ShelfString> m_strings;
    std::string m_requestKey;
};

} // namespace rw::ui
