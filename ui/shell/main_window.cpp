// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include "ui/bench/bench_station.h"
#include "ui/books/books_station.h"
#include "ui/counter/counter_station.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/presenter/paper_presenter.h"
#include "ui/presenter/shell_presenter.h"
#include "ui/shell/first_day_sheet.h"
#include "ui/shell/guide_window.h"
#include "ui/shell/history_sheet.h"
#include "ui/shell/paper_sheet.h"
#include "ui/shell/station_band.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/text/bench_words.h"
#include "ui/text/paper_words.h"
#include "ui/text/sentences.h"
#include "ui/text/shell_words.h"
#include "ui/widgets/look.h"

#include <QCloseEvent>
#include <QMenuBar>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

MainWindow::MainWindow(DeskRunner& runner, Shift& shift, const Outside& outside, std::chrono::milliseconds pause,
                       QWidget* parent)
    : QMainWindow(parent)
    , m_shift(shift)
    , m_shell(std::make_unique<ShellPresenter>(runner, shift))
    , m_paper(std::make_unique<PaperPresenter>(runner, shift, outside.printer))
    , m_owner(std::make_unique<OwnerPresenter>(runner, shift))
    , m_band(new StationBand(shift, this))
    , m_message(new QLabel(this))
    , m_pages(new QStackedWidget(this))
    , m_keys(new QLabel(this))
    , m_counter(new CounterStation(runner, shift, pause, m_pages))
    , m_bench(new BenchStation(runner, shift, m_pages))
    , m_stockroom(new StockroomStation(runner, shift, *m_owner, outside, m_pages))
    , m_books(new BooksStation(runner, shift, *m_owner, outside, m_pages))
    , m_history(new HistorySheet(runner, shift, m_pages))
    , m_papers(new PaperSheet(outside.printer, m_pages))
    , m_firstDay(new FirstDaySheet(*m_shell, shift, m_pages))
    , m_guide(new GuideWindow(this))
    , m_stations{m_counter, m_bench, m_stockroom, m_books} {
    build();
    makeMenus();
    connectStations();
    connect(m_shell.get(), &ShellPresenter::shopKnown, this, &MainWindow::shopKnown);
    connect(m_shell.get(), &ShellPresenter::foundOnMachines, this, [this](const std::vector<desk::JobCard>& cards) {
        QStringList lines;
        for (const auto& card : cards) {
            lines << foundOnMachineText(card);
        }
        say(lines.join(QLatin1Char('\n')));
    });
    connect(m_shell.get(), &ShellPresenter::foundAhead, this, [this](Instant moment) {
        const QString words = clockIsBehindText(moment, m_shift.now(), m_shift.zone());
        say(m_said.isEmpty() ? words : words + QLatin1Char('\n') + m_said);
    });
    showMessage();
    m_shell->refresh();
}

MainWindow::~MainWindow() = default;

void MainWindow::build() {
    setWindowTitle(tr("Reelwright"));
    resize(1280, 800);
    auto* middle = new QWidget(this);
    auto* layout = new QVBoxLayout(middle);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_band);
    layout->addWidget(m_message);
    auto* bench = new QVBoxLayout;
    bench->setContentsMargins(16, 12, 16, 6);
    bench->addWidget(m_pages);
    layout->addLayout(bench, 1);
    layout->addWidget(m_keys);
    setCentralWidget(middle);

    m_message->setWordWrap(true);
    m_message->setMargin(10);
    m_message->setIndent(12);
    m_message->setTextFormat(Qt::PlainText);
    m_message->setAutoFillBackground(true);
    m_message->setBackgroundRole(QPalette::Base);
    m_message->setAccessibleName(tr("What happened"));
    m_keys->setContentsMargins(20, 2, 16, 8);
    m_keys->setAccessibleName(tr("Keys"));
    m_keys->setForegroundRole(QPalette::PlaceholderText);
    // The line of keys never makes the window wider than somebody wants it.
    m_keys->setWordWrap(true);

    for (auto* station : m_stations) {
        m_pages->addWidget(station);
    }
    m_pages->addWidget(m_history);
    m_pages->addWidget(m_papers);
    m_pages->addWidget(m_firstDay);
    // Until the ledger has said what shop this is, there is nothing to work with.
    m_pages->hide();
    m_band->addStation(m_counter->name(), QStringLiteral("Ctrl+1"));
    m_band->addStation(m_bench->name(), QStringLiteral("Ctrl+2"));
    m_band->addStation(m_stockroom->name(), QStringLiteral("Ctrl+3"));
    m_band->addStation(m_books->name(), QStringLiteral("Ctrl+4"));
}

void MainWindow::makeMenus() {
    auto* stations = menuBar()->addMenu(tr("&Stations"));
    for (int i = 0; i < m_stations.size(); ++i) {
        auto* action = stations->addAction(m_stations[i]->menuName());
        action->setShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + i)));
        connect(action, &QAction::triggered, this, [this, i] { chooseStation(i); });
    }
    stations->addSeparator();
    auto* who = stations->addAction(tr("&Who is working"));
    who->setShortcut(QKeySequence(Qt::Key_F2));
    connect(who, &QAction::triggered, m_band, &StationBand::askWho);
    stations->addSeparator();
    auto* quit = stations->addAction(tr("&Close the program"));
    quit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Q));
    connect(quit, &QAction::triggered, this, &QWidget::close);

    // A menu for each station, with every action and its key.
    for (auto* station : m_stations) {
        auto* menu = menuBar()->addMenu(station->menuName());
        station->fillMenu(*menu);
    }
    makePaperMenu();
    auto* help = menuBar()->addMenu(tr("&Guide"));
    auto* guide = help->addAction(tr("The guide to this &station"));
    guide->setShortcut(QKeySequence(Qt::Key_F1));
    connect(guide, &QAction::triggered, this, [this] { openGuide(); });
    connect(help->addAction(tr("All of &it")), &QAction::triggered, this,
            [this] { m_guide->open(QStringLiteral("index")); });
    connect(help->addAction(tr("&Cautions")), &QAction::triggered, this,
            [this] { m_guide->open(QStringLiteral("cautions")); });
}

void MainWindow::makePaperMenu() {
    auto* papers = menuBar()->addMenu(tr("&Papers"));
    const auto add = [&](const QString& words, const QKeySequence& key, auto act) {
        auto* action = papers->addAction(words);
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, act);
    };
    add(tr("Tag &and ticket"), QKeySequence(Qt::CTRL | Qt::Key_T), [this] { print({Slip::Tag, Slip::Ticket}); });
    add(tr("The &job card"), QKeySequence(Qt::CTRL | Qt::Key_P), [this] { print({Slip::JobCard}); });
    add(tr("The &tag alone"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T), [this] { print({Slip::Tag}); });
    add(tr("The t&icket alone"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I), [this] { print({Slip::Ticket}); });
    add(tr("The &frame label"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L), [this] { print({Slip::FrameLabel}); });
    add(tr("The &ready slip"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R), [this] { print({Slip::Ready}); });
    papers->addSeparator();
    add(tr("&Printers and paper"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), [this] { showPapers(); });
}

void MainWindow::connectStations() {
    connect(&m_shift, &Shift::troubleChanged, this, &MainWindow::showMessage);
    connect(&m_shift, &Shift::allAnswered, this, [this](bool written) {
        // What was not kept is said, and is still there to be done again.
        m_closing = m_closing && written;
        if (m_closing) {
            close();
        }
    });
    connect(&m_shift, &Shift::staffWanted, this, &MainWindow::askWhoWorks);
    connect(&m_shift, &Shift::staffChanged, this, [this] {
        if (m_said == whoIsWorkingText()) {
            say({}); // it was answered
        }
    });
    for (int i = 0; i < m_stations.size(); ++i) {
        connect(m_stations[i], &Station::said, this, &MainWindow::say);
        connect(m_stations[i], &Station::keysChanged, this, &MainWindow::showKeys);
        connect(m_stations[i], &Station::wanted, this, [this, i] { goTo(i); });
    }
    connect(m_counter, &CounterStation::historyWanted, this, &MainWindow::showHistory);
    connect(m_bench, &BenchStation::historyWanted, this, &MainWindow::showHistory);
    connect(m_books, &BooksStation::historyWanted, this, &MainWindow::showHistory);
    connect(m_history, &HistorySheet::left, this, &MainWindow::leaveSheet);
    connect(m_papers, &PaperSheet::left, this, &MainWindow::leaveSheet);
    connect(m_paper.get(), &PaperPresenter::printed, this, &MainWindow::say);
    connect(m_stockroom, &StockroomStation::sheetWanted, m_paper.get(),
            qOverload<const desk::StockTakeSheet&>(&PaperPresenter::print));
    connect(m_paper.get(), &PaperPresenter::refused, this, [this](const Refusal& why) { say(sentenceFor(why)); });
    connect(m_band, &StationBand::chosen, this, &MainWindow::chooseStation);
    connect(m_band, &StationBand::left, this, [this] {
        if (auto* station = currentStation()) {
            station->enter();
        }
    });
}

void MainWindow::shopKnown() {
    const bool isFirstAnswer = m_pages->isHidden();
    m_pages->show();
    if (!m_shift.shop().isNew()) {
        open();
    } else if (isFirstAnswer) {
        bringIntoView(m_firstDay);
        m_firstDay->enter();
        showKeys();
    }
}

void MainWindow::open() {
    if (!m_opened) {
        m_opened = true;
        m_shell->lookAtMachines();
        m_shell->lookAtClock();
        goTo(m_cameFrom);
    }
}

void MainWindow::bringIntoView(QWidget* page) {
    if (auto* before = currentStation(); before != nullptr && before != page) {
        before->leave();
    }
    m_pages->setCurrentWidget(page);
}

void MainWindow::goTo(int station) {
    m_cameFrom = station;
    if (!m_opened) {
        return;
    }
    bringIntoView(m_stations[station]);
    m_band->setCurrent(station);
    m_stations[station]->enter();
    showKeys();
}

void MainWindow::goTo(const QString& guidePage) {
    for (int i = 0; i < m_stations.size(); ++i) {
        if (m_stations[i]->guidePage() == guidePage) {
            goTo(i);
        }
    }
}

void MainWindow::chooseStation(int station) {
    if (m_pages->currentWidget() != m_stations[station]) {
        say({});
    }
    goTo(station);
}

Station* MainWindow::currentStation() const { return qobject_cast<Station*>(m_pages->currentWidget()); }

void MainWindow::showHistory(const HistoryOf& of) {
    bringIntoView(m_history);
    m_history->show(of);
    showKeys();
}

void MainWindow::leaveSheet() { goTo(m_cameFrom); }

void MainWindow::print(const std::vector<Slip>& slips) {
    const auto* station = currentStation();
    const auto job = station != nullptr ? station->paperJob() : std::nullopt;
    if (job) {
        m_paper->print(slips, *job);
    } else {
        say(noPaperText());
    }
}

void MainWindow::showPapers() {
    if (m_opened) {
        bringIntoView(m_papers);
        m_papers->enter();
        showKeys();
    }
}

void MainWindow::openGuide() {
    const auto* station = currentStation();
    m_guide->open(station != nullptr ? station->guidePage() : QStringLiteral("index"));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    // What was just logged or cut is kept before the window goes. Whoever asks twice does not want to wait.
    if (m_shift.underWay() > 0 && !m_closing) {
        m_closing = true;
        event->ignore();
        say(closingText());
        return;
    }
    event->accept();
}

void MainWindow::askWhoWorks() {
    say(whoIsWorkingText());
    m_band->askWho();
}

void MainWindow::say(const QString& words) {
    m_said = words;
    showMessage();
}

void MainWindow::showMessage() {
    // What is wrong with the ledger comes before what was done. What was typed is still where it was.
    if (!m_shift.trouble().isEmpty()) {
        const QString goesOn = m_shift.isCutOff() ? QLatin1Char('\n') + askedAgainText() : QString();
        m_message->setText(QStringLiteral("✕ ") + m_shift.trouble() + goesOn);
        m_message->show();
        return;
    }
    m_message->setText(m_said.isEmpty() ? QString() : QStringLiteral("▸ ") + m_said);
    m_message->setVisible(!m_said.isEmpty());
}

void MainWindow::showKeys() {
    QStringList keys;
    if (const auto* station = currentStation()) {
        for (const auto* action : station->keysInView()) {
            if (action->isEnabled() && !action->shortcut().isEmpty()) {
                QString words = action->text();
                words.remove(QLatin1Char('&'));
                QString key = action->shortcut().toString(QKeySequence::NativeText);
                key.replace(QStringLiteral("Return"), tr("Enter"));
                keys << key + QLatin1Char(' ') + words.toLower();
            }
        }
    } else if (m_pages->currentWidget() == m_history || m_pages->currentWidget() == m_papers) {
        keys << tr("Esc back");
    }
    keys << tr("F1 guide");
    m_keys->setText(keys.join(QStringLiteral("   ·   ")));
}

} // namespace rw::ui
