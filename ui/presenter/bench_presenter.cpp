// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/bench_presenter.h"

#include <algorithm>

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
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> shelf) {
             if (shelf) {
                 m_shelf = std::move(*shelf);
             }
         });
    if (m_selected) {
        loadCard();
    }
}

void BenchPresenter::loadQueue() {
    read([](desk::Transaction& ledger) { return desk::benchQueue(ledger); },
         [this](Result<std::vector<desk::JobLine>> queue) {
             if (!queue) {
                 return;
             }
             m_queue = std::move(*queue);
             m_loaded = true;
             const bool gone =
                 m_selected && std::ranges::none_of(m_queue, [&](const auto& line) { return line.id == *m_selected; });
             if (gone) {
                 m_selected.reset();
                 m_card.reset();
                 m_cardAsked.cancel();
             }
             if (!m_selected && !m_queue.empty()) {
                 // When the bench opens, a racket that lies on a machine comes before whatever is promised first. Later
                 // the one on the other machine is somebody else's work.
                 const JobState first = m_worked ? JobState::Logged : JobState::OnTheMachine;
                 const auto next = std::ranges::find_if(m_queue, [&](const auto& line) { return line.state == first; });
                 m_selected = next == m_queue.end() ? m_queue.front().id : next->id;
                 loadCard();
             }
             Q_EMIT queueChanged();
             if (!m_selected) {
                 Q_EMIT cardChanged();
             }
         });
}

void BenchPresenter::select(JobId job) {
    if (m_selected != job) {
        m_selected = job;
        loadCard();
    }
}

std::optional<MachineId> BenchPresenter::machineForCard() const {
    if (m_card && m_selected == m_card->job.id && m_card->machine && isOnTheMachine()) {
        return m_card->machine->id;
    }
    return shift().machine();
}

void BenchPresenter::loadCard() {
    m_cardAsked.cancel();
    // The machine that a job is on is the job's; before that it is the one chosen at this window.
    const auto line = std::ranges::find_if(m_queue, [&](const auto& l) { return l.id == *m_selected; });
    const bool onMachine = line != m_queue.end() && line->state == JobState::OnTheMachine;
    const auto machine = onMachine ? std::nullopt : shift().machine();
    m_cardAsked =
        read([job = *m_selected, machine](desk::Transaction& ledger) { return desk::jobCard(ledger, job, machine); },
             [this](Result<desk::JobCard> card) {
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
    if (!m_card) {
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
    std::ranges::stable_sort(pieces, [](const auto* one, const auto* other) {
        return one->piece.current().cut->at > other->piece.current().cut->at;
    });
    return pieces;
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
    if (m_acting || !shift().staff()) {
        return;
    }
    m_acting = true;
    write(
        std::move(useCase),
        [this, done = std::move(done)](auto result) {
            m_acting = false;
            if (!result) {
                Q_EMIT refused(result.error());
                refresh();
                return;
            }
            m_worked = true;
            done(*result);
            refresh();
        },
        [this] { m_acting = false; });
}

void BenchPresenter::take() {
    if (!canTake()) {
        return;
    }
    const desk::TakeJob command{*m_selected, *shift().machine(), by()};
    act([command](desk::Transaction& ledger) { return desk::takeJob(ledger, command); },
        [this](const Job& job) { Q_EMIT taken(job); });
}

void BenchPresenter::putDown() {
    if (!canPutDown()) {
        return;
    }
    const desk::PutDown command{*m_selected, by()};
    act([command](desk::Transaction& ledger) { return desk::putDownJob(ledger, command); },
        [this](const Job& job) { Q_EMIT putDownDone(job); });
}

void BenchPresenter::confirmCut(PieceRole role, const std::optional<LotId>& lot, Length length,
                                const std::optional<Length>& measuredLeft) {
    if (!m_card) {
        return;
    }
    const auto piece =
        std::ranges::find_if(m_card->pieces, [role](const auto& candidate) { return candidate.piece.role == role; });
    if (piece == m_card->pieces.end() || piece->piece.attempts.empty()) {
        return;
    }
    const desk::ConfirmCut command{*m_selected, role, piece->piece.current().number, lot, length, measuredLeft, by()};
    act([command](desk::Transaction& ledger) { return desk::confirmCut(ledger, command); },
        [this](const desk::CutDone& done) { Q_EMIT cut(done); });
}

void BenchPresenter::lose(PieceRole role, LostReason reason) {
    if (!m_card) {
        return;
    }
    const auto piece =
        std::ranges::find_if(m_card->pieces, [role](const auto& candidate) { return candidate.piece.role == role; });
    if (piece == m_card->pieces.end() || !piece->piece.isCut()) {
        return;
    }
    const desk::LoseLength command{*m_selected, role, piece->piece.current().number, reason, by()};
    act([command](desk::Transaction& ledger) { return desk::loseLength(ledger, command); },
        [this, role, reason](const Job& job) { Q_EMIT lost(job, role, reason); });
}

void BenchPresenter::finish(const TensionPair& strung, const QString& note) {
    const auto machine = machineForCard();
    if (!canFinish() || !machine) {
        return;
    }
    const desk::FinishJob command{*m_selected, strung, *machine, note.trimmed().toStdString(), by()};
    act([command](desk::Transaction& ledger) { return desk::finishJob(ledger, command); },
        [this](const Job& job) { Q_EMIT finished(job); });
}

} // namespace rw::ui
