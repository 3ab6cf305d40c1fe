// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/desk_runner.h"
#include "ui/presenter/history_presenter.h"
#include "ui/widgets/station.h"

#include <QStackedWidget>

namespace rw::ui {

class BooksPage;
class ContentsList;
class OwnerPresenter;
struct Outside;
class Shift;

/// The fourth station: what is open, what came in, what was earned, and how the shop is set up. A list of pages at the
/// left, as at the front of a book, and the chosen page beside it.
class BooksStation final : public Station {
    Q_OBJECT

public:
    BooksStation(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside,
                 QWidget* parent = nullptr);

    [[nodiscard]] QString name() const override { return tr("Books"); }
    [[nodiscard]] QString menuName() const override { return tr("B&ooks"); }
    [[nodiscard]] QString guidePage() const override { return QStringLiteral("books"); }
    void enter() override;
    void refresh() override;
    void leave() override; ///< what the shop paid is hidden again
    void fillMenu(QMenu& menu) const override;
    [[nodiscard]] QList<QAction*> keysInView() const override;

    /// Turns to a page; the keyboard goes onto it when `inside`, else onto the contents.
    void open(BooksPage* page, bool inside);
    [[nodiscard]] BooksPage* page() const; ///< the one that is open
    [[nodiscard]] const QList<BooksPage*>& pages() const { return m_all; }
    [[nodiscard]] ContentsList* contents() const { return m_contents; }
    [[nodiscard]] bool isInside() const { return m_inside; } ///< the keyboard is on the page

Q_SIGNALS:
    void historyWanted(const rw::ui::HistoryOf& of);

private:
    void addPage(BooksPage* page);
    void makeKeys();
    void back();
    void turn(int by); ///< to the page so many further on, round and back
    void setInside(bool inside);
    void putKeyboard();

    OwnerPresenter& m_owner;
    ContentsList* m_contents;
    QStackedWidget* m_pages;
    QList<BooksPage*> m_all;
    QAction* m_intoKey = nullptr;
    QAction* m_backKey = nullptr;
    QAction* m_hideKey = nullptr;
    bool m_inside = false;
};

} // namespace rw::ui
