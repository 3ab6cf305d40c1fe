// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/job_line_model.h"
#include "ui/port/desk_runner.h"
#include "ui/presenter/history_presenter.h"
#include "ui/widgets/station.h"

#include <QComboBox>
#include <QLabel>
#include <QListView>

#include <memory>

class QStackedWidget;

namespace rw::ui {

class BenchPresenter;
class CardView;
class CutStrip;
class FinishStrip;
class LostStrip;
class Shift;

/// Bench: what is next at the left, the job card, and below it the one thing that comes next, done with Enter.
class BenchStation final : public Station {
    Q_OBJECT

public:
    BenchStation(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~BenchStation() override;

    [[nodiscard]] QString name() const override { return tr("Bench"); }
    [[nodiscard]] QString menuName() const override { return tr("&Bench"); }
    [[nodiscard]] QString guidePage() const override { return QStringLiteral("bench"); }
    void enter() override;
    void refresh() override;
    [[nodiscard]] std::optional<JobId> paperJob() const override;

    [[nodiscard]] BenchPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] QListView* queue() const { return m_queueView; }
    [[nodiscard]] QComboBox* machines() const { return m_machines; }
    [[nodiscard]] CardView* card() const { return m_card; }
    [[nodiscard]] CutStrip* cutStrip() const { return m_cut; }
    [[nodiscard]] FinishStrip* finishStrip() const { return m_finish; }
    [[nodiscard]] LostStrip* lostStrip() const { return m_lost; }
    [[nodiscard]] QLabel* prompt() const { return m_prompt; }

    void next(); ///< what Enter does: the next step, or what the open strip asks
    void openCut();
    void openLost();
    void openFinish();
    void closeStrip();

Q_SIGNALS:
    void historyWanted(const rw::ui::HistoryOf& of);

private:
    void build();
    void makeKeys();
    void connectPresenter();
    void showQueue();
    void showCard();
    void showMachines();
    void showPrompt();
    /// An open strip belongs to a piece or a job of the card: with another card it closes.
    [[nodiscard]] bool stripFitsCard() const;
    void closeStripOfAnother();
    void nextMachine();
    void lose(int digit);
    void wantHistory(bool ofRacket);
    void enableKeys();

    Shift& m_shift;
    std::unique_ptr<BenchPresenter> m_presenter;
    JobLineModel m_queue;
    QListView* m_queueView;
    QComboBox* m_machines;
    CardView* m_card;
    QStackedWidget* m_strip;
    QLabel* m_prompt;
    CutStrip* m_cut;
    LostStrip* m_lost;
    FinishStrip* m_finish;
    QAction* m_nextKey = nullptr;
    QAction* m_takeKey = nullptr;
    QAction* m_cutKey = nullptr;
    QAction* m_lostKey = nullptr;
    QAction* m_finishKey = nullptr;
    QAction* m_putDownKey = nullptr;
    QAction* m_machineKey = nullptr;
    QAction* m_backKey = nullptr;
    QList<QAction*> m_reasonKeys; ///< while a length is lost
    bool m_filling = false;
};

} // namespace rw::ui
