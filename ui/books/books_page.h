// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/history_presenter.h"
#include "ui/widgets/workplace.h"

namespace rw::ui {

/// One page of the books: a line in their contents, and what stands beside them when it is chosen. Its actions
/// (addKey, addCommand) work while the keyboard is on the page. Esc, Ctrl+PageUp and Ctrl+PageDown are the station's;
/// every other key is the page's own. A page asks the ledger in refresh() alone, which is called when it comes into
/// view, and by its presenter afterwards; see BooksPresenter.
class BooksPage : public Workplace {
    Q_OBJECT

public:
    [[nodiscard]] virtual QString name() const = 0; ///< its line in the contents: "Still open"
    /// The keyboard comes onto the page: it goes where work begins. The page was refreshed before.
    virtual void enter() = 0;
    /// Esc: closes what is open on the page, with the keyboard back where that was opened from. False when nothing
    /// was: the keyboard goes back to the contents.
    virtual bool back() { return false; }
    /// The page is not in view any more, or the books are not.
    virtual void leave() {}

Q_SIGNALS:
    void historyWanted(const rw::ui::HistoryOf& of);

protected:
    using Workplace::Workplace;
};

} // namespace rw::ui
