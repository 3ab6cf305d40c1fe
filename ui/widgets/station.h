// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "ui/widgets/workplace.h"

#include <QMenu>

#include <optional>

namespace rw::ui {

/// A way of working, as the window holds it.
class Station : public Workplace {
    Q_OBJECT

public:
    [[nodiscard]] virtual QString name() const = 0;
    [[nodiscard]] virtual QString menuName() const = 0; ///< the same with its letter for Alt
    /// Which page of the guide explains it: "counter".
    [[nodiscard]] virtual QString guidePage() const = 0;
    /// The station comes into view: it asks the ledger again and puts the keyboard where work begins.
    virtual void enter() = 0;
    /// Another part of the window comes into view in its place.
    virtual void leave() {}
    /// The job whose papers are printed from here: the one that is looked at or was just logged.
    [[nodiscard]] virtual std::optional<JobId> paperJob() const { return std::nullopt; }

    /// Puts every action that it has into its menu.
    virtual void fillMenu(QMenu& menu) const { menu.addActions(keys()); }
    /// The actions whose keys may work now, where the keyboard is.
    [[nodiscard]] virtual QList<QAction*> keysInView() const { return keys(); }

protected:
    using Workplace::Workplace;
};

} // namespace rw::ui
