// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/intake_presenter.h"

#include "ui/presenter/request_key.h"
#include "ui/text/counter_words.h"

#include <algorithm>
#include <cassert>

namespace rw::ui {

namespace {
/// Whether one of the lots holds the string.
bool holds(const std::vector<Lot>& lots, StringArticleId article) {
    return std::ranges::find(lots, article, &Lot::article) != lots.end();
}
} // namespace

IntakePresenter::IntakePresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent)
    , m_pause(pause, [this] { askPreview(); }) {
    startAfresh();
}

void IntakePresenter::startAfresh() {
    m_requestKey = newRequestKey();
    m_form = {};
    m_preview.reset();
    m_refusal.reset();
    m_asking.cancel();
    m_pause.stop();
    m_thinking = false;
}

void IntakePresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> shelf) {
             if (shelf) {
                 m_shelf = std::move(*shelf);
                 pickStrings();
             }
         });
    if (draft()) {
        askPreview();
    }
}

void IntakePresenter::pickStrings() {
    m_strings.clear();
    for (const auto& string : m_shelf) {
        if (!string.article.retired && (!m_racket || string.article.sport == m_racket->frame.sport)) {
            m_strings.push_back(string);
        }
    }
    Q_EMIT stringsChanged();
}

void IntakePresenter::setRacket(const std::optional<desk::RacketSummary>& racket) {
    m_racket = racket;
    startAfresh();
    pickStrings();
    Q_EMIT formReplaced();
    Q_EMIT previewChanged();
}

void IntakePresenter::setOwnLots(const std::vector<Lot>& lots) {
    m_ownLots = lots;
    Q_EMIT stringsChanged();
}

void IntakePresenter::setForm(const IntakeForm& form) {
    const bool sameTensions = form.mainsTension == m_form.mainsTension && form.crossesTension == m_form.crossesTension;
    m_form = form;
    m_form.agreed = form.agreed && sameTensions;
    m_asking.cancel();
    if (!draft()) {
        m_pause.stop();
        m_thinking = false;
        m_preview.reset();
        m_refusal.reset();
        Q_EMIT previewChanged();
        return;
    }
    m_thinking = true;
    m_pause.again();
    Q_EMIT previewChanged();
}

bool IntakePresenter::canRepeat(Repeat which) const {
    if (!m_racket || !m_racket->lastJob) {
        return false;
    }
    return which == Repeat::AsAsked || m_racket->lastJob->strung.has_value();
}

void IntakePresenter::repeatLast(Repeat which) {
    assert(canRepeat(which));
    const Job& last = *m_racket->lastJob;
    IntakeForm form;
    form.mains = last.pieces.front().article;
    form.mainsSource = sourceNow(last.pieces.front());
    form.crossesSource = form.mainsSource;
    if (last.pieces.size() > 1) {
        form.crossesSource = sourceNow(last.pieces.back());
        if (last.pieces.back().article != last.pieces.front().article) {
            form.crosses = last.pieces.back().article;
        }
    }
    const TensionPair& tensions = which == Repeat::AsStrung ? last.strung->tensions : last.asked;
    form.mainsTension = tensions.mains;
    form.crossesTension = tensions.crosses;
    form.method = last.method; // its side comes along by itself, as last time, unless the frame now forces one
    form.note = QString::fromStdString(last.note).replace(QLatin1Char('\n'), QStringLiteral("; "));
    form.rush = m_form.rush;
    form.extras = m_form.extras;
    form.discount = m_form.discount;
    form.mustBy = m_form.mustBy;
    form.cameWith = m_form.cameWith; // what came today and what was seen today
    form.remarks = m_form.remarks;
    setForm(form);
    Q_EMIT formReplaced();
}

Tension IntakePresenter::crossesOfOne(const Tension& number) const {
    return m_racket && shift().hasShop()
               ? crossesOfOneNumber(number, m_racket->frame.sport, shift().shop().badmintonCrosses)
               : number;
}

QString IntakePresenter::wordsForTheYes() const {
    return aboveMarkedWords(shift().hasShop() ? shift().shop().aboveMarkedWords : std::string());
}

PieceSource IntakePresenter::sourceNow(const JobPiece& piece) const {
    const bool isGone = piece.source == PieceSource::CustomersLot && !holds(m_ownLots, piece.article);
    return isGone ? PieceSource::ShopLot : piece.source;
}

std::optional<desk::IntakeDraft> IntakePresenter::draft() const {
    if (!m_racket || !m_form.mains || !m_form.mainsTension || !m_form.crossesTension) {
        return std::nullopt;
    }
    desk::IntakeDraft draft{
        .frame = *m_racket->frame.id,
        .racket = m_racket->racket.id,
        .method = m_form.method,
        .route = std::nullopt,
        .shortSide = m_form.shortSide,
        .mains = {*m_form.mains, m_form.mainsSource, m_form.mainsLot, m_form.mainsSetLength},
        .crosses = std::nullopt,
        .tensions = {*m_form.mainsTension, *m_form.crossesTension},
        .extras = m_form.extras,
        .rush = m_form.rush,
        .discount = m_form.discount && !m_form.discount->reason.empty() ? m_form.discount : std::nullopt,
        .mustBy = m_form.mustBy,
    };
    if (m_form.crosses || m_form.crossesLot || m_form.crossesSource != m_form.mainsSource) {
        draft.crosses = desk::WantedString{m_form.crosses.value_or(*m_form.mains), m_form.crossesSource,
                                           m_form.crossesLot, m_form.crossesSetLength};
    }
    return draft;
}

void IntakePresenter::askPreview() {
    const auto asked = draft();
    m_asking.cancel();
    if (!asked) {
        return;
    }
    m_thinking = true;
    m_asking = read([draft = *asked, now = shift().now()](
                        desk::Transaction& ledger) { return desk::previewIntake(ledger, draft, now); },
                    [this](Result<desk::IntakePreview> preview) {
                        m_thinking = false;
                        m_preview.reset();
                        m_refusal.reset();
                        if (preview) {
                            m_preview = std::move(*preview);
                        } else {
                            m_refusal = preview.error();
                        }
                        Q_EMIT previewChanged();
                    });
}

std::vector<Lacking> IntakePresenter::lacking() const {
    std::vector<Lacking> lacking;
    if (!m_racket) {
        lacking.push_back(Lacking::Racket);
    }
    if (!m_form.mains) {
        lacking.push_back(Lacking::Strings);
    }
    if (!m_form.mainsTension || !m_form.crossesTension) {
        lacking.push_back(Lacking::Tensions);
    }
    return lacking;
}

void IntakePresenter::log() {
    if (m_logging == m_requestKey || !lacking().empty() || !somebodyWorks()) {
        return;
    }
    m_logging = m_requestKey;
    desk::LogJob command{.requestKey = m_requestKey,
                         .customer = m_racket->racket.customer,
                         .racket = *m_racket->racket.id,
                         .draft = *draft(),
                         .note = m_form.note.trimmed().toStdString(),
                         .promised = std::nullopt,
                         .by = by(),
                         .inspection = {m_form.cameWith.toStdString(), m_form.remarks.toStdString()}};
    if (m_preview && !m_thinking) {
        command.told = m_preview->promise;
    }
    if (m_form.agreed) {
        command.yes = desk::InformedYes{m_form.agreedBy.trimmed().toStdString(), wordsForTheYes().toStdString()};
    }
    write(
        [command, racket = *m_racket](desk::Transaction& ledger) -> Result<LoggedIntake> {
            auto job = desk::logJob(ledger, command);
            if (!job) {
                return tl::unexpected<Refusal>(job.error());
            }
            auto person = desk::person(ledger, command.customer);
            if (!person) {
                return tl::unexpected<Refusal>(person.error());
            }
            const bool above = aboveMarked(racket.frame.marked, job->asked).has_value();
            return LoggedIntake{.job = *std::move(job),
                                .customer = std::move(person->customer),
                                .racket = racket,
                                .notAgreed = above && !command.yes,
                                .isOnTheCounter = true};
        },
        [this, key = m_requestKey](Result<LoggedIntake> done) { answered(key, std::move(done)); },
        [this, key = m_requestKey] { forget(key); });
}

void IntakePresenter::forget(const std::string& key) {
    if (m_logging == key) {
        m_logging.clear();
    }
}

void IntakePresenter::answered(const std::string& key, Result<LoggedIntake> done) {
    forget(key);
    const bool isOnTheCounter = key == m_requestKey;
    if (!done) {
        Q_EMIT logRefused(done.error(), isOnTheCounter);
        return;
    }
    done->isOnTheCounter = isOnTheCounter;
    if (!isOnTheCounter) {
        Q_EMIT logged(*done);
        return;
    }
    startAfresh();
    m_racket.reset();
    Q_EMIT logged(*done);
    pickStrings();
    Q_EMIT formReplaced();
    Q_EMIT previewChanged();
}

} // namespace rw::ui
