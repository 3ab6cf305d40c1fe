// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/person_presenter.h"

#include "core/desk/account.h"
#include "core/desk/remove_customer.h"
#include "ui/presenter/request_key.h"
#include "ui/text/format.h"

#include <algorithm>

namespace rw::ui {

PersonPresenter::PersonPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent)
    , m_pause(pause, [this] { search(); })
    , m_requestKey(newRequestKey()) {}

void PersonPresenter::refresh() {
    if (!m_picked) {
        return;
    }
    read([id = *m_picked->customer.id](desk::Transaction& ledger) { return desk::person(ledger, id); },
         [this](Result<desk::PersonFound> person) {
             if (person && m_picked && m_picked->customer.id == person->customer.id) {
                 m_picked = std::move(*person);
                 Q_EMIT pickedChanged();
             }
         });
    loadInTheShop();
}

void PersonPresenter::setText(const QString& text) {
    m_text = text.trimmed();
    m_requestKey = newRequestKey();
    m_search.cancel();
    stopPicking();
    m_searched = false;
    if (m_text.isEmpty()) {
        m_pause.stop();
        forgetFound();
        Q_EMIT foundChanged();
        return;
    }
    m_pause.again();
}

void PersonPresenter::hurry() {
    if (!m_searched) {
        m_pause.now();
    }
}

void PersonPresenter::forgetFound() {
    m_found.clear();
    m_tagged.reset();
}

void PersonPresenter::search() {
    if (m_text.isEmpty()) {
        return;
    }
    struct Found {
        std::vector<desk::PersonFound> people;
        std::optional<desk::TaggedJob> tagged;
    };
    m_search.cancel();
    m_search = read(
        [text = m_text.toStdString()](desk::Transaction& ledger) -> Result<Found> {
            auto people = desk::listPeople(ledger, text);
            auto tagged = desk::jobByTag(ledger, text);
            if (!people || !tagged) {
                return tl::unexpected(people ? tagged.error() : people.error());
            }
            return Found{*std::move(people), *std::move(tagged)};
        },
        [this](Result<Found> found) {
            forgetFound();
            if (found) {
                m_found = std::move(found->people);
                m_tagged = std::move(found->tagged);
            }
            m_searched = true;
            Q_EMIT foundChanged();
        });
}

void PersonPresenter::lookUp(CustomerId id) {
    m_isPicking = true;
    m_picking = read([id](desk::Transaction& ledger) { return desk::person(ledger, id); },
                     [this](const Result<desk::PersonFound>& whole) {
                         m_isPicking = false;
                         if (whole) {
                             pick(*whole);
                         }
                     },
                     [this] { m_isPicking = false; });
}

void PersonPresenter::stopPicking() {
    m_picking.cancel();
    m_isPicking = false;
}

void PersonPresenter::pick(const desk::PersonFound& person) {
    m_search.cancel();
    m_pause.stop();
    stopPicking();
    if (!person.isWhole) {
        lookUp(*person.customer.id);
        return;
    }
    m_picked = person;
    m_inTheShop.clear();
    m_account.reset();
    Q_EMIT pickedChanged();
    loadInTheShop();
}

void PersonPresenter::clear() {
    m_search.cancel();
    stopPicking();
    m_pause.stop();
    m_text.clear();
    m_requestKey = newRequestKey();
    forgetFound();
    m_picked.reset();
    m_inTheShop.clear();
    m_account.reset();
    Q_EMIT foundChanged();
    Q_EMIT pickedChanged();
    Q_EMIT inTheShopChanged();
}

void PersonPresenter::loadInTheShop() {
    const CustomerId id = *m_picked->customer.id;
    struct Here {
        std::vector<desk::HistoryEntry> history;
        Money account;
    };
    read(
        [id](desk::Transaction& ledger) -> Result<Here> {
            auto history = desk::historyOfCustomer(ledger, id);
            const auto account = desk::accountOf(ledger, id);
            if (!history || !account) {
                return tl::unexpected<Refusal>(history ? account.error() : history.error());
            }
            return Here{*std::move(history), *account};
        },
        [this, id](Result<Here> here) {
            if (!here || !m_picked || m_picked->customer.id != id) {
                return;
            }
            std::erase_if(here->history, [](const desk::HistoryEntry& entry) {
                return entry.job.state == JobState::Collected || entry.job.state == JobState::Withdrawn;
            });
            m_inTheShop = std::move(here->history);
            m_account = here->account;
            Q_EMIT inTheShopChanged();
        });
}

Customer PersonPresenter::newPersonFromText() const {
    Customer customer{std::nullopt, {}, {}, 0};
    const bool isNumber = std::any_of(m_text.begin(), m_text.end(), [](QChar c) { return c.isDigit(); }) &&
                          std::none_of(m_text.begin(), m_text.end(), [](QChar c) { return c.isLetter(); });
    if (isNumber) {
        customer.contacts.push_back({Contact::Kind::Phone, m_text.toStdString()});
    } else {
        customer.name = m_text.toStdString();
    }
    return customer;
}

void PersonPresenter::add(const Customer& customer) {
    if (m_adding) {
        return;
    }
    m_adding = true;
    write(
        [command = desk::AddCustomer{m_requestKey, customer}](desk::Transaction& ledger) -> Result<desk::PersonFound> {
            const auto id = desk::addCustomer(ledger, command);
            if (!id) {
                return tl::unexpected<Refusal>(id.error());
            }
            return desk::person(ledger, *id);
        },
        [this](Result<desk::PersonFound> person) {
            m_adding = false;
            m_requestKey = newRequestKey();
            if (person) {
                pick(*person);
            } else {
                Q_EMIT addRefused(person.error());
            }
        },
        [this] { m_adding = false; });
}

void PersonPresenter::remove() {
    if (m_removing || !m_picked || !somebodyWorks()) {
        return;
    }
    m_removing = true;
    const CustomerId id = *m_picked->customer.id;
    write([id, now = shift().now()](desk::Transaction& ledger) { return desk::removeCustomer(ledger, id, now); },
          [this, id, name = fromUtf8(m_picked->customer.name)](const Result<void>& done) {
              m_removing = false;
              if (!done) {
                  Q_EMIT removeRefused(done.error());
                  return;
              }
              if (m_picked && m_picked->customer.id == id) {
                  clear();
              }
              Q_EMIT removed(name);
          },
          [this] { m_removing = false; });
}

} // namespace rw::ui
