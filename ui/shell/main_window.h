// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/documents/slip.h"
#include "ui/port/desk_runner.h"
#include "ui/port/outside.h"
#include "ui/presenter/history_presenter.h"

#include <QLabel>
#include <QMainWindow>

#include <chrono>
#include <memory>

class QStackedWidget;

namespace rw::ui {

class BenchStation;
class BooksStation;
class CounterStation;
class FirstDaySheet;
class GuideWindow;
class HistorySheet;
class OwnerPresenter;
class PaperPresenter;
class PaperSheet;
class ShellPresenter;
class Shift;
class Station;
class StationBand;
class StockroomStation;

/// The one window: the stations, the history that is reached from them, the guide, who is working, and what has just
/// happened. It holds no rule.
class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    /// `pause`: how long typing rests before the ledger is asked.
    MainWindow(DeskRunner& runner, Shift& shift, const Outside& outside, std::chrono::milliseconds pause,
               QWidget* parent = nullptr);
    ~MainWindow() override;

    void goTo(int station);              ///< 0 counter, 1 bench, 2 stockroom, 3 books
    void goTo(const QString& guidePage); ///< "bench"; an unknown name changes nothing
    void showHistory(const HistoryOf& of);
    void openGuide();
    void print(const std::vector<Slip>& slips); ///< of the job that the station in view names
    void showPapers();                          ///< which printer serves what

    [[nodiscard]] CounterStation* counter() const { return m_counter; }
    [[nodiscard]] BenchStation* bench() const { return m_bench; }
    [[nodiscard]] StockroomStation* stockroom() const { return m_stockroom; }
    [[nodiscard]] BooksStation* books() const { return m_books; }
    [[nodiscard]] HistorySheet* history() const { return m_history; }
    [[nodiscard]] PaperSheet* papers() const { return m_papers; }
    [[nodiscard]] FirstDaySheet* firstDay() const { return m_firstDay; }
    [[nodiscard]] GuideWindow* guide() const { return m_guide; }
    [[nodiscard]] StationBand* band() const { return m_band; }
    [[nodiscard]] QLabel* message() const { return m_message; }
    [[nodiscard]] QLabel* keys() const { return m_keys; }

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void build();
    void makeMenus();
    void makePaperMenu();
    void connectStations();
    void shopKnown();
    void open();                       ///< the stations, once
    void bringIntoView(QWidget* page); ///< a station, the history, the first day
    void askWhoWorks();
    void say(const QString& words);
    void showMessage();
    void showKeys();
    void chooseStation(int station); ///< what was said at the one before stays there
    void leaveSheet();               ///< from history or the papers back to the station
    [[nodiscard]] Station* currentStation() const;

    Shift& m_shift;
    std::unique_ptr<ShellPresenter> m_shell;
    std::unique_ptr<PaperPresenter> m_paper;
    std::unique_ptr<OwnerPresenter> m_owner;
    StationBand* m_band;
    QLabel* m_message;
    QStackedWidget* m_pages;
    QLabel* m_keys;
    CounterStation* m_counter;
    BenchStation* m_bench;
    StockroomStation* m_stockroom;
    BooksStation* m_books;
    HistorySheet* m_history;
    PaperSheet* m_papers;
    FirstDaySheet* m_firstDay;
    GuideWindow* m_guide;
    QList<Station*> m_stations;
    QString m_said;
    int m_cameFrom = 0; ///< the station that history and the papers go back to
    bool m_opened = false;
    bool m_closing = false;
};

} // namespace rw::ui
