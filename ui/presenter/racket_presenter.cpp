// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/racket_presenter.h"

#include "core/customers/search_key.h"
#include "ui/presenter/request_key.h"

#include <algorithm>
#include <sstream>

namespace rw::ui {

namespace {
/// Every word that was typed stands somewhere in the frame's name or is the racket's mark.
bool matches(const desk::RacketSummary& racket, const std::string& text) {
    const std::string name = searchKey(racket.frame.name) + ' ' + searchKey(racket.racket.mark);
    std::istringstream words(searchKey(text));
    std::string word;
    while (words >> word) {
        if (name.find(word) == std::string::npos) {
            return false;
        }
    }
    return true;
}
} // namespace

RacketPresenter::RacketPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent)
    , m_pause(pause, [this] { search(); })
    , m_requestKey(newRequestKey()) {}

void RacketPresenter::setPerson(const std::optional<desk::PersonFound>& person) {
    const bool same = person && m_person && person->customer.id == m_person->customer.id;
    m_person = person;
    if (same) {
        // Read again, because somebody wrote: whoever is in the middle of choosing goes on choosing.
        if (m_picked) {
            const auto& rackets = m_person->rackets;
            const auto now = std::ranges::find_if(
                rackets, [&](const auto& racket) { return racket.racket.id == m_picked->racket.id; });
            m_picked = now == rackets.end() ? m_picked : *now;
        }
        return;
    }
    clear();
    if (m_person && m_person->rackets.size() == 1) {
        m_picked = m_person->rackets.front();
        Q_EMIT pickedChanged();
    }
}

void RacketPresenter::clear() {
    m_search.cancel();
    m_pause.stop();
    m_text.clear();
    m_requestKey = newRequestKey();
    m_searched = true;
    matchOwn();
    if (m_picked) {
        m_picked.reset();
        Q_EMIT pickedChanged();
    }
}

void RacketPresenter::setText(const QString& text) {
    m_text = text.trimmed();
    m_requestKey = newRequestKey();
    m_search.cancel();
    m_searched = m_text.isEmpty();
    matchOwn();
    if (m_text.isEmpty()) {
        m_pause.stop();
    } else {
        m_pause.again();
    }
}

void RacketPresenter::hurry() {
    if (!m_searched) {
        m_pause.now();
    }
}

void RacketPresenter::matchOwn() {
    m_choices.clear();
    if (m_person) {
        for (const auto& racket : m_person->rackets) {
            if (matches(racket, m_text.toStdString())) {
                m_choices.push_back({racket, racket.frame});
            }
        }
    }
    Q_EMIT choicesChanged();
}

void RacketPresenter::search() {
    m_search.cancel();
    m_search =
        read([text = m_text.toStdString()](desk::Transaction& ledger) { return desk::findFrames(ledger, text, 8); },
             [this](Result<std::vector<FrameModel>> frames) {
                 m_searched = true;
                 if (frames) {
                     for (const auto& frame : *frames) {
                         m_choices.push_back({std::nullopt, frame});
                     }
                 }
                 Q_EMIT choicesChanged();
             });
}

void RacketPresenter::pick(const RacketChoice& choice) {
    if (!choice.own) {
        addRacket(*choice.frame.id, nextMark(choice.frame.name));
        return;
    }
    m_search.cancel();
    m_pause.stop();
    m_picked = choice.own;
    Q_EMIT pickedChanged();
}

std::string RacketPresenter::nextMark(const std::string& frameName) const {
    for (char letter = 'A'; letter <= 'Z'; ++letter) {
        const std::string mark(1, letter);
        const bool taken =
            m_person && std::ranges::any_of(m_person->rackets, [&](const auto& racket) {
                return searchKey(racket.frame.name) == searchKey(frameName) && racket.racket.mark == mark;
            });
        if (!taken) {
            return mark;
        }
    }
    return {};
}

void RacketPresenter::addNew(const FrameModel& frame, const std::string& mark) { addRacket(frame, mark); }

void RacketPresenter::addRacket(const std::variant<FrameModelId, FrameModel>& frame, const std::string& mark) {
    if (m_adding || !m_person) {
        return;
    }
    m_adding = true;
    struct Added {
        RacketId racket;
        desk::PersonFound person;
    };
    write(
        [command = desk::AddRacket{m_requestKey, *m_person->customer.id, frame, mark}](
            desk::Transaction& ledger) -> Result<Added> {
            const auto racket = desk::addRacket(ledger, command);
            if (!racket) {
                return tl::unexpected<Refusal>(racket.error());
            }
            auto person = desk::person(ledger, command.customer);
            if (!person) {
                return tl::unexpected<Refusal>(person.error());
            }
            return Added{*racket, std::move(*person)};
        },
        [this](Result<Added> added) {
            m_adding = false;
            m_requestKey = newRequestKey();
            if (!added) {
                Q_EMIT addRefused(added.error());
                return;
            }
            m_person = std::move(added->person);
            for (const auto& racket : m_person->rackets) {
                if (racket.racket.id == added->racket) {
                    m_picked = racket;
                }
            }
            Q_EMIT pickedChanged();
        },
        [this] { m_adding = false; });
}

} // namespace rw::ui
