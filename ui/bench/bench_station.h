// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/job_line_model.h"
#include "ui/port/desk_runner.h"
#include "ui/presenter/history_presenter.h"
#include "ui/widgets/station.h"

#include <QComboBox>
#include <QLabel>
#include <QListView>

#include <cstdint>
#include <memory>

namespace rw::ui {

class BenchPresenter;
class BenchStrips;
class CardView;
class CutStrip;
class FinishStrip;
class LostStrip;
class MachineChoice;
class QueueView;
class Shift;
class UndoStrip;

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
    [[nodiscard]] QListView* queue() const;
    [[nodiscard]] QComboBox* machines() const;
    [[nodiscard]] CardView* card() const { return m_card; }
    [[nodiscard]] CutStrip* cutStrip() const;
    [[nodiscard]] FinishStrip* finishStrip() const;
    [[nodiscard]] LostStrip* lostStrip() const;
    [[nodiscard]] UndoStrip* undoStrip() const;
    [[nodiscard]] QLabel* prompt() const;

    void next(); ///< what Enter does: the next step, or what the open strip asks
    void openLost();

Q_SIGNALS:
    void historyWanted(const rw::ui::HistoryOf& of);

private:
    void build();
    void makeKeys();
    void makeReasonKeys();
    void connectPresenter();
    void connectStrips();
    void sayWhatWasDone();
    void showQueue();
    void showCard();
    void showPrompt();
    void openTag(std::int64_t number);
    [[nodiscard]] QString whatTakingSays() const;
    void wantHistory(bool ofRacket);
    void enableKeys();

    Shift& m_shift;
    std::unique_ptr<BenchPresenter> m_presenter;
    JobLineModel m_queue;
    QueueView* m_queueView;
    MachineChoice* m_machines;
    CardView* m_card;
    BenchStrips* m_strips;
    QAction* m_nextKey = nullptr;
    QAction* m_onKey = nullptr;
    QAction* m_backwardKey = nullptr;
    QAction* m_takeKey = nullptr;
    QAction* m_cutKey = nullptr;
    QAction* m_lostKey = nullptr;
    QAction* m_asideKey = nullptr;
    QAction* m_finishKey = nullptr;
    QAction* m_putDownKey = nullptr;
    QAction* m_nodKey = nullptr;
    QAction* m_undoKey = nullptr;
    QAction* m_machineKey = nullptr;
    QAction* m_backKey = nullptr;
    QList<QAction*> m_reasonKeys; ///< while a length is lost
    bool m_filling = false;
};

} // namespace rw::ui
