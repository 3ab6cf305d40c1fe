// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/bench_presenter.h"

#include "core/desk/change_asked.h"

#include <algorithm>
#include <utility>

namespace rw::ui {

BenchPresenter::BenchPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "bench", parent) {
    connect(&shift, &Shift::machineChanged, this, [this] {
        if (m_selected) {
            loadCard();
        }
    });
}

void BenchPresenter::refresh() {
    loadQueue();
    loadShelf();
    if (m_selected) {
        loadCard();
    }
}

void BenchPresenter::loadShelf() {
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> shelf) {
             if (shelf) {
                 m_shelf = std::move(*shelf);
             }
         });
}

void BenchPresenter::loadQueue() {
    struct Bench {
        std::vector<desk::JobLine> queue;
        std::vector<desk::OnMachine> lying;
    };
    read(
        [](desk::Transaction& ledger) -> Result<Bench> {
            auto queue = desk::benchQueue(ledger);
            auto lying = desk::jobsOnMachines(ledger);
            if (!queue || !lying) {
                return tl::unexpected(queue ? lying.error() : queue.error());
            }
            return Bench{std::move(*queue), std::move(*lying)};
        },
        [this](Result<Bench> bench) {
            if (!bench) {
                return;
            }
            m_queue = std::move(bench->queue);
            m_lying = std::move(bench->lying);
            m_loaded = true;
            const bool gone =
                m_selected && std::ranges::none_of(m_queue, [&](const auto& line) { return line.id == *m_selected; });
            if (gone) {
                m_selected.reset();
                m_card.reset();
                m_cardAsked.cancel();
                m_cardIsOld = false;
            }
            if (!m_selected && !m_queue.empty()) {
                selectFirst();
            }
            Q_EMIT queueChanged();
            if (!m_selected) {
                Q_EMIT cardChanged();
            }
        });
}

void BenchPresenter::selectFirst() {
    // When the bench opens, a racket that lies on a machine comes before whatever is promised first. Later the one on
    // the other machine is somebody else's work.
    const JobState first = m_worked ? JobState::Logged : JobState::OnTheMachine;
    const auto next = std::ranges::find_if(m_queue, [&](const auto& line) { return line.state == first; });
    m_selected = next == m_queue.end() ? m_queue.front().id : next->id;
    m_askedAbout.reset();
    loadCard();
}

void BenchPresenter::select(JobId job) {
    if (m_selected == job) {
        return;
    }
    m_selected = job;
    m_askedAbout.reset();
    m_card.reset();
    Q_EMIT cardChanged();
    loadCard();
}

void BenchPresenter::askWhereItIs(std::int64_t number) {
    read(
        [number](desk::Transaction& ledger) -> Result<std::optional<JobState>> {
            const auto id = ledger.jobs().byNumber(number);
            const auto job = id ? ledger.jobs().get(*id) : std::nullopt;
            return job ? std::optional(job->state) : std::nullopt;
        },
        [this, number](const Result<std::optional<JobState>>& state) {
            if (state) {
                Q_EMIT notAtTheBench(number, *state);
            }
        });
}

void BenchPresenter::loadCard() {
    m_cardAsked.cancel();
    m_cardAsked = read(
        [job = *m_selected, chosen = shift().machine()](desk::Transaction& ledger) {
            // The machine that a job is on is the job's; before that it is the one chosen at this window.
            const auto stored = ledger.jobs().get(job);
            const bool lies = stored && stored->state == JobState::OnTheMachine;
            return desk::jobCard(ledger, job, lies ? std::nullopt : chosen);
        },
        [this](Result<desk::JobCard> card) {
            m_cardIsOld = false;
            if (!card) {
                Q_EMIT refused(card.error());
                return;
            }
            m_card = std::move(*card);
            Q_EMIT cardChanged();
        });
}

bool BenchPresenter::isOnTheMachine() const { return m_card && m_card->job.state == JobState::OnTheMachine; }

BenchPresenter::Step BenchPresenter::step() const {
    if (!m_card || isWaiting()) {
        return Step::Nothing;
    }
    if (m_card->job.state == JobState::Logged) {
        return shift().machine() ? Step::Take : Step::Nothing;
    }
    if (!isOnTheMachine()) {
        return Step::Nothing;
    }
    return nextToCut() != nullptr ? Step::Cut : Step::Finish;
}

std::optional<std::int64_t> BenchPresenter::lyingThere() const {
    const auto itself =
        std::ranges::find(m_lying, m_selected, [](const auto& lying) { return std::optional(lying.job); });
    const auto machine = itself == m_lying.end() ? shift().machine() : std::optional(itself->machine);
    for (const desk::OnMachine& other : m_lying) {
        if (other.machine == machine && other.job != m_selected) {
            return other.number;
        }
    }
    return std::nullopt;
}

const desk::CardPiece* BenchPresenter::nextToCut() const {
    if (!m_card) {
        return nullptr;
    }
    const auto found =
        std::ranges::find_if(m_card->pieces, [](const desk::CardPiece& piece) { return !piece.piece.isCut(); });
    return found == m_card->pieces.end() ? nullptr : &*found;
}

std::vector<const desk::CardPiece*> BenchPresenter::cutPieces() const {
    std::vector<const desk::CardPiece*> pieces;
    if (m_card) {
        for (const auto& piece : m_card->pieces) {
            if (piece.piece.isCut()) {
                pieces.push_back(&piece);
            }
        }
    }
    std::ranges::reverse(pieces); // of two that were cut in one moment the later piece was cut later
    std::ranges::stable_sort(pieces, [](const auto* one, const auto* other) {
        return one->piece.current().cut->at > other->piece.current().cut->at;
    });
    return pieces;
}

PieceInHand BenchPresenter::inHand(const desk::CardPiece& piece) const {
    return {*m_card->job.id, piece.piece.role, piece.piece.current().number};
}

const desk::CardPiece* BenchPresenter::find(const PieceInHand& piece) const {
    if (!m_card || m_card->job.id != piece.job) {
        return nullptr;
    }
    const auto found = std::ranges::find_if(m_card->pieces, [&](const desk::CardPiece& candidate) {
        return candidate.piece.role == piece.role && candidate.piece.current().number == piece.attempt;
    });
    return found == m_card->pieces.end() ? nullptr : &*found;
}

bool BenchPresenter::isUncut(const PieceInHand& piece) const {
    const auto* found = find(piece);
    return found != nullptr && !found->piece.isCut();
}

bool BenchPresenter::isCut(const PieceInHand& piece) const {
    const auto* found = find(piece);
    return found != nullptr && found->piece.isCut();
}

bool BenchPresenter::isAllCut(JobId job) const {
    return isOnTheMachine() && m_card->job.id == job && nextToCut() == nullptr;
}

std::vector<Lot> BenchPresenter::lotsFor(const desk::CardPiece& piece) const {
    std::vector<Lot> lots;
    if (piece.lot) {
        lots.push_back(*piece.lot);
    }
    for (const auto& string : m_shelf) {
        if (string.article.id != piece.piece.article) {
            continue;
        }
        for (const auto& lot : string.lots) {
            if (!piece.lot || lot.lot.id != piece.lot->id) {
                lots.push_back(lot.lot);
            }
        }
    }
    return lots;
}

template<class UseCase, class Done>
void BenchPresenter::act(UseCase useCase, Done done) {
    writeOnce(
        std::move(useCase),
        [this, done = std::move(done)](const auto& result) {
            m_worked = true;
            m_cardIsOld = true;
            done(result);
        },
        [this](const Refusal& why) {
            Q_EMIT refused(why);
            refresh(); // what was believed here was not so
        });
}

bool BenchPresenter::isMeant() {
    const auto other = lyingThere();
    if (!other || std::exchange(m_askedAbout, other) == other) {
        return true;
    }
    Q_EMIT otherLies(*other);
    return false;
}

void BenchPresenter::take() {
    if (!canTake() || !mayAct() || !isMeant()) {
        return;
    }
    const desk::TakeJob command{*m_card->job.id, *shift().machine(), by()};
    act([command](desk::Transaction& ledger) { return desk::takeJob(ledger, command); },
        [this](const Job& job) { Q_EMIT taken(job); });
}

void BenchPresenter::putDown() {
    if (!canPutDown() || !mayAct()) {
        return;
    }
    const desk::PutDown command{*m_card->job.id, by()};
    act([command](desk::Transaction& ledger) { return desk::putDownJob(ledger, command); },
        [this](const Job& job) { Q_EMIT putDownDone(job); });
}

void BenchPresenter::confirmCut(const PieceInHand& piece, const std::optional<LotId>& lot, Length length,
                                const std::optional<Length>& measuredLeft) {
    if (find(piece) == nullptr || !mayAct() || !isMeant()) {
        return;
    }
    const desk::ConfirmCut command{piece.job, piece.role, piece.attempt, lot, length, measuredLeft, by()};
    act([command](desk::Transaction& ledger) { return desk::confirmCut(ledger, command); },
        [this, length](const desk::CutDone& done) {
            m_lastActedOn = done.job.id;
            Q_EMIT cut(done, length);
        });
}

void BenchPresenter::lose(const PieceInHand& piece, LostReason reason) {
    if (!isCut(piece) || !mayAct()) {
        return;
    }
    const desk::LoseLength command{piece.job, piece.role, piece.attempt, reason, by()};
    act([command](desk::Transaction& ledger) { return desk::loseLength(ledger, command); },
        [this, role = piece.role, reason](const Job& job) { Q_EMIT lost(job, role, reason); });
}

void BenchPresenter::finish(JobId job, const TensionPair& strung, const QString& note,
                            const std::vector<TailsOf>& tails) {
    if (!isAllCut(job) || !m_card->machine || !mayAct()) {
        return;
    }
    const desk::FinishJob command{job, strung, *m_card->machine->id, note.trimmed().toStdString(), by(), tails};
    act([command](desk::Transaction& ledger) { return desk::finishJob(ledger, command); },
        [this](const Job& finishedJob) {
            m_lastActedOn = finishedJob.id;
            Q_EMIT finished(finishedJob);
        });
}

void BenchPresenter::moveTo(BenchStep step) {
    if (!mayAct()) {
        return;
    }
    const desk::MoveStep command{*m_card->job.id, m_card->job.benchStep, step, by()};
    act([command](desk::Transaction& ledger) { return desk::moveStep(ledger, command); }, [](const Job&) {});
}

void BenchPresenter::goOn() {
    if (canGoOn()) {
        moveTo(*stepAfter(m_card->job.benchStep));
    }
}

void BenchPresenter::goBack() {
    if (canGoBack()) {
        moveTo(*stepBefore(m_card->job.benchStep));
    }
}

void BenchPresenter::nod() {
    if (!canNod() || !mayAct()) {
        return;
    }
    const desk::Nod command{*m_card->job.id, by()};
    act([command](desk::Transaction& ledger) { return desk::nodToChanges(ledger, command); },
        [this](const Job& job) { Q_EMIT nodded(job); });
}

void BenchPresenter::setEndAside(const PieceInHand& piece, LotId lot, Length measured, Length wanted) {
    if (!isUncut(piece) || !mayAct()) {
        return;
    }
    const desk::SetEndAside command{piece.job, piece.role, piece.attempt, lot, measured, wanted, by()};
    act([command](desk::Transaction& ledger) { return desk::setEndAside(ledger, command); },
        [this, role = piece.role](const desk::EndSetAside& aside) { Q_EMIT endSetAside(aside, role); });
}

void BenchPresenter::askLastDone() {
    if (!canTakeBack()) {
        return;
    }
    read(
        [acted = m_lastActedOn,
         selected = m_selected](desk::Transaction& ledger) -> Result<std::optional<desk::LastDone>> {
            for (const auto& job : {acted, selected}) {
                if (!job) {
                    continue;
                }
                auto last = desk::lastDone(ledger, *job);
                if (!last || *last) {
                    return last;
                }
            }
            return std::optional<desk::LastDone>();
        },
        [this](Result<std::optional<desk::LastDone>> last) {
            if (last) {
                Q_EMIT lastDoneKnown(*last);
            } else {
                Q_EMIT refused(last.error());
            }
        });
}

void BenchPresenter::takeBack(const desk::LastDone& last) {
    if (isWaiting() || !mayAct()) {
        return;
    }
    const JobId job = *last.job.id;
    const auto done = [this, last](const Job& corrected) {
        select(*corrected.id);
        Q_EMIT takenBack(last);
    };
    if (!last.cut) {
        act([command = desk::Reopen{job, by()}](desk::Transaction& ledger) { return desk::reopenJob(ledger, command); },
            done);
        return;
    }
    const auto piece = std::ranges::find(last.job.pieces, *last.cut, &JobPiece::role);
    const desk::TakeBackCut command{job, piece->role, piece->current().number, by()};
    act([command](desk::Transaction& ledger) { return desk::takeBackCut(ledger, command); }, done);
}

} // namespace rw::ui
