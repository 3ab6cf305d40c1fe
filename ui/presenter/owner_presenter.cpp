// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/owner_presenter.h"

namespace rw::ui {

OwnerPresenter::OwnerPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "books", parent) {}

void OwnerPresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::hasOwnerPin(ledger); },
         [this](const Result<bool>& has) {
             if (has && m_hasPin != *has) {
                 m_hasPin = *has;
                 m_given = m_given && *has;
                 Q_EMIT changed();
             }
         });
}

void OwnerPresenter::give(const QString& typed) {
    if (m_busy || !isLocked()) {
        return;
    }
    m_busy = true;
    read([pin = typed.toStdString()](desk::Transaction& ledger) { return desk::isOwnerPin(ledger, pin); },
         [this](const Result<bool>& right) {
             m_busy = false;
             if (right && *right) {
                 m_given = true;
                 Q_EMIT changed();
             } else {
                 Q_EMIT wrongPin();
             }
         },
         [this] { m_busy = false; });
}

void OwnerPresenter::hide() {
    if (m_given) {
        m_given = false;
        Q_EMIT changed();
    }
}

void OwnerPresenter::change(const QString& current, const std::optional<QString>& pin) {
    if (m_busy) {
        return;
    }
    m_busy = true;
    const desk::ChangePin change{current.toStdString(), pin ? std::optional(pin->toStdString()) : std::nullopt};
    // The hash is made while nothing is being written, so that no other station waits for it.
    read([change](desk::Transaction& ledger) { return desk::preparePin(ledger, change); },
         [this](const Result<std::optional<desk::PreparedPin>>& prepared) {
             m_busy = false;
             if (!prepared) {
                 Q_EMIT refused(prepared.error());
             } else if (!*prepared) {
                 Q_EMIT wrongPin();
             } else {
                 keep(**prepared);
             }
         },
         [this] { m_busy = false; });
}

void OwnerPresenter::keep(const desk::PreparedPin& pin) {
    m_busy = true;
    write([pin](desk::Transaction& ledger) { return desk::keepPin(ledger, pin); },
          [this, has = !pin.hash.empty()](const Result<void>& done) {
              m_busy = false;
              if (!done) {
                  Q_EMIT refused(done.error());
                  return;
              }
              m_hasPin = has;
              m_given = has; // who sets it sees what it hides
              Q_EMIT changed();
              Q_EMIT kept();
          },
          [this] { m_busy = false; });
}

} // namespace rw::ui
