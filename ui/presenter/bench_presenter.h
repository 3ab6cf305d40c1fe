// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/on_machines.h"
#include "core/desk/set_end_aside.h"
#include "core/desk/stockroom.h"
#include "core/desk/undo.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>
#include <vector>

namespace rw::ui {

/// One attempt at one piece of one job, as the card showed it when somebody began to do something with it.
struct PieceInHand {
    JobId job;
    PieceRole role;
    int attempt;
};

/// The job at the machine: what is next, its card, and the one thing that comes next with it. Whatever is done is done
/// to the job whose card is shown.
class BenchPresenter final : public StationPresenter {
    Q_OBJECT

public:
    BenchPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override; ///< the queue and the card again

    [[nodiscard]] const std::vector<desk::JobLine>& queue() const { return m_queue; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    void select(JobId job); ///< takes the old card away at once; the new one comes with cardChanged()
    [[nodiscard]] const std::optional<JobId>& selected() const { return m_selected; }
    /// Of a tag that is not in the queue: notAtTheBench() answers.
    void askWhereItIs(std::int64_t number);
    /// The card of the selected job, for the machine it is on or the one that was chosen.
    [[nodiscard]] const std::optional<desk::JobCard>& card() const { return m_card; }

    /// What a stringer does next with the selected job.
    enum class Step { Nothing, Take, Cut, Finish };
    /// Nothing, too, from a command on until the card that shows what became of it.
    [[nodiscard]] Step step() const;
    [[nodiscard]] bool canTake() const { return step() == Step::Take; }
    /// The number of another job that lies on the machine where this one lies, or would be taken.
    [[nodiscard]] std::optional<std::int64_t> lyingThere() const;
    /// That was said of this job, and the next press means it.
    [[nodiscard]] bool isAskedAboutOther() const { return lyingThere() && m_askedAbout == lyingThere(); }
    [[nodiscard]] bool canPutDown() const { return isOnTheMachine() && !isWaiting(); }
    [[nodiscard]] bool canLose() const { return canPutDown() && !cutPieces().empty(); }
    [[nodiscard]] bool canFinish() const { return step() == Step::Finish; }
    /// Where the racket is at the bench is one step further, or one back.
    [[nodiscard]] bool canGoOn() const { return canPutDown() && stepAfter(m_card->job.benchStep); }
    [[nodiscard]] bool canGoBack() const { return canPutDown() && stepBefore(m_card->job.benchStep); }
    /// What is asked was changed and nobody at the bench has nodded to it.
    [[nodiscard]] bool canNod() const { return m_card && m_card->change && !isWaiting(); }
    [[nodiscard]] bool canTakeBack() const { return !isWaiting() && (m_lastActedOn || m_selected); }

    /// The piece that is cut next; nothing when all are.
    [[nodiscard]] const desk::CardPiece* nextToCut() const;
    /// Pieces whose length can be lost: those that are cut, the last cut first.
    [[nodiscard]] std::vector<const desk::CardPiece*> cutPieces() const;
    /// A piece of the card, to come back to. Precondition: a card is shown.
    [[nodiscard]] PieceInHand inHand(const desk::CardPiece& piece) const;
    /// The card still shows that job with that attempt, uncut or cut.
    [[nodiscard]] bool isUncut(const PieceInHand& piece) const;
    [[nodiscard]] bool isCut(const PieceInHand& piece) const;
    /// The card still shows that job on its machine with every piece cut.
    [[nodiscard]] bool isAllCut(JobId job) const;
    /// Open lots of the shop that hold a piece's string, the planned one first.
    [[nodiscard]] std::vector<Lot> lotsFor(const desk::CardPiece& piece) const;

    void take(); ///< where another job lies, the second time
    void putDown();
    /// Where another job lies, the second time. `lot` nothing: the planned one. `measuredLeft` is what the tape says is
    /// on it before the cut.
    void confirmCut(const PieceInHand& piece, const std::optional<LotId>& lot, Length length,
                    const std::optional<Length>& measuredLeft);
    void lose(const PieceInHand& piece, LostReason reason);
    void finish(JobId job, const TensionPair& strung, const QString& note, const std::vector<TailsOf>& tails = {});
    void goOn();
    void goBack();
    void nod();
    /// The end on `lot` was measured and is too short for the `wanted` length: a remnant, and another lot for the
    /// piece.
    void setEndAside(const PieceInHand& piece, LotId lot, Length measured, Length wanted);
    /// Looks up the last thing that was done here, else to the selected job: lastDoneKnown() answers.
    void askLastDone();
    void takeBack(const desk::LastDone& last);

Q_SIGNALS:
    void queueChanged();
    void cardChanged();
    void otherLies(std::int64_t number); ///< on that machine: said once, the next press means it
    void taken(const Job& job);
    void putDownDone(const Job& job);
    void cut(const desk::CutDone& done, Length length);
    void lost(const Job& job, PieceRole role, LostReason reason);
    void finished(const Job& job);
    void nodded(const Job& job);
    void endSetAside(const desk::EndSetAside& aside, PieceRole role);
    void lastDoneKnown(const std::optional<desk::LastDone>& last); ///< nothing: there is nothing to take back
    void takenBack(const desk::LastDone& last);
    void refused(const Refusal& why);
    void notAtTheBench(std::int64_t number, const std::optional<JobState>& state); ///< no state: no such job

private:
    [[nodiscard]] bool isOnTheMachine() const;
    [[nodiscard]] bool isWaiting() const { return isActing() || m_cardIsOld; }
    [[nodiscard]] const desk::CardPiece* find(const PieceInHand& piece) const;
    void loadQueue();
    void selectFirst();
    void loadShelf();
    void loadCard();
    void moveTo(BenchStep step);
    [[nodiscard]] bool isMeant();
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);

    std::vector<desk::JobLine> m_queue;
    std::vector<desk::OnMachine> m_lying;
    bool m_loaded = false;
    bool m_worked = false;    ///< something was done here since it opened
    bool m_cardIsOld = false; ///< a command was done; the card that shows it is on its way
    std::optional<JobId> m_selected;
    std::optional<std::int64_t> m_askedAbout; ///< the other job on its machine that was said of the selected one
    std::optional<JobId> m_lastActedOn; ///< by a cut or a finish at this window
    std::optional<desk::JobCard> m_card;
    std::vector<desk::ShelfString> m_shelf;
    desk::CancelToken m_cardAsked;
};

} // namespace rw::ui
