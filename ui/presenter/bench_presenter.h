// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/stockroom.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>
#include <vector>

namespace rw::ui {

/// The job at the machine: what is next, its card, and the one thing that comes next with it.
class BenchPresenter final : public StationPresenter {
    Q_OBJECT

public:
    BenchPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override; ///< the queue and the card again

    [[nodiscard]] const std::vector<desk::JobLine>& queue() const { return m_queue; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    void select(JobId job);
    [[nodiscard]] const std::optional<JobId>& selected() const { return m_selected; }
    /// The card of the selected job, for the machine it is on or the one that was chosen.
    [[nodiscard]] const std::optional<desk::JobCard>& card() const { return m_card; }

    /// What a stringer does next with the selected job.
    enum class Step { Nothing, Take, Cut, Finish };
    [[nodiscard]] Step step() const;
    [[nodiscard]] bool canTake() const { return step() == Step::Take; }
    [[nodiscard]] bool canPutDown() const { return isOnTheMachine(); }
    [[nodiscard]] bool canFinish() const { return step() == Step::Finish; }

    /// The piece that is cut next; nothing when all are.
    [[nodiscard]] const desk::CardPiece* nextToCut() const;
    /// Pieces whose length can be lost: those that are cut, the last cut first.
    [[nodiscard]] std::vector<const desk::CardPiece*> cutPieces() const;
    /// Open lots of the shop that hold a piece's string, the planned one first.
    [[nodiscard]] std::vector<Lot> lotsFor(const desk::CardPiece& piece) const;

    void take();
    void putDown();
    /// `lot` nothing: the planned one. `measuredLeft` is what the tape says is on it before the cut.
    void confirmCut(PieceRole role, const std::optional<LotId>& lot, Length length,
                    const std::optional<Length>& measuredLeft);
    void lose(PieceRole role, LostReason reason);
    void finish(const TensionPair& strung, const QString& note);

Q_SIGNALS:
    void queueChanged();
    void cardChanged();
    void taken(const Job& job);
    void putDownDone(const Job& job);
    void cut(const desk::CutDone& done);
    void lost(const Job& job, PieceRole role, LostReason reason);
    void finished(const Job& job);
    void refused(const Refusal& why);

private:
    [[nodiscard]] bool isOnTheMachine() const;
    [[nodiscard]] std::optional<MachineId> machineForCard() const;
    void loadQueue();
    void loadCard();
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);

    std::vector<desk::JobLine> m_queue;
    bool m_loaded = false;
    bool m_worked = false; ///< something was done here since it opened
    bool m_acting = false; ///< a command is on its way; a second press waits for its answer
    std::optional<JobId> m_selected;
    std::optional<desk::JobCard> m_card;
    std::vector<desk::ShelfString> m_shelf;
    desk::CancelToken m_cardAsked;
};

} // namespace rw::ui
