// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/owner.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>

namespace rw::ui {

/// Whether purchase prices, costs and margins may be shown at this window. Without a PIN they always are; with one,
/// from when it is given until they are hidden again. Until the ledger has said whether there is one, they are hidden.
class OwnerPresenter final : public StationPresenter {
    Q_OBJECT

public:
    OwnerPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] bool hasPin() const { return m_hasPin.value_or(false); }
    [[nodiscard]] bool mayShow() const { return m_hasPin && (!*m_hasPin || m_given); }
    [[nodiscard]] bool isLocked() const { return hasPin() && !m_given; } ///< giving the PIN would show them

    /// Shows them when that is the PIN; answered by changed() or wrongPin(). Pressed twice it is looked at once.
    void give(const QString& typed);
    void hide();
    /// Sets or changes the PIN; no `pin`: there is none from now on. Answered by kept(), wrongPin() or refused().
    void change(const QString& current, const std::optional<QString>& pin);

Q_SIGNALS:
    void changed(); ///< what may be shown, or whether there is a PIN
    void wrongPin();
    void kept();
    void refused(const Refusal& why);

private:
    void keep(const desk::PreparedPin& pin);

    std::optional<bool> m_hasPin; ///< nothing: not known yet
    bool m_given = false;
    bool m_busy = false; ///< a PIN is being looked at
};

} // namespace rw::ui
