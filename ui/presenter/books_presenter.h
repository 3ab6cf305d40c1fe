// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/station_presenter.h"

namespace rw::ui {

/// What the presenters of the books' pages share: there are many of them, and each only reads while its page is in
/// view.
class BooksPresenter : public StationPresenter {
    Q_OBJECT

public:
    /// Its page comes into view, or is looked at again: reads.
    void open() {
        m_open = true;
        load();
    }
    virtual void close() { m_open = false; } ///< its page is not in view any more
    void refresh() final {
        if (m_open) {
            load();
        }
    }

protected:
    BooksPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
        : StationPresenter(runner, shift, "books", parent) {}

    [[nodiscard]] bool isOpen() const { return m_open; }
    virtual void load() = 0; ///< asks the ledger for everything that the page shows

private:
    bool m_open = false;
};

} // namespace rw::ui
