// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/rack_presenter.h"

#include "core/desk/books.h"
#include "core/desk/undo.h"
#include "ui/presenter/request_key.h"

namespace rw::ui {

RackPresenter::RackPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void RackPresenter::refresh() {
    struct Lists {
        std::vector<desk::JobLine> rack;
        std::vector<desk::UnpaidJob> unpaid;
        std::vector<desk::ToGiveBack> toGiveBack;
    };
    read(
        [](desk::Transaction& ledger) -> Result<Lists> {
            auto rack = desk::onTheRack(ledger);
            auto unpaid = desk::collectedUnpaid(ledger);
            auto toGiveBack = desk::toGiveBack(ledger);
            if (!rack || !unpaid || !toGiveBack) {
                return tl::unexpected<Refusal>(!rack ? rack.error() : !unpaid ? unpaid.error() : toGiveBack.error());
            }
            return Lists{*std::move(rack), *std::move(unpaid), *std::move(toGiveBack)};
        },
        [this](Result<Lists> lists) {
            if (lists) {
                m_lines = std::move(lists->rack);
                m_unpaid = std::move(lists->unpaid);
                m_toGiveBack = std::move(lists->toGiveBack);
                m_moneyLines.clear();
                for (const desk::UnpaidJob& unpaid : m_unpaid) {
                    m_moneyLines.push_back(unpaid.job);
                }
                for (const desk::ToGiveBack& back : m_toGiveBack) {
                    m_moneyLines.push_back(back.job);
                }
                m_loaded = true;
                Q_EMIT linesChanged();
            }
        });
}

void RackPresenter::show(Shows shows) {
    if (m_shows != shows) {
        m_shows = shows;
        close();
        Q_EMIT linesChanged();
    }
}

void RackPresenter::open(JobId job) {
    struct Owing {
        Job job;
        Money owed;
    };
    m_opening.cancel();
    m_opening = read(
        [job](desk::Transaction& ledger) -> Result<Owing> {
            auto found = ledger.jobs().get(job);
            if (!found) {
                return refuse(Code::NotFound, {{"what", "job"}, {"text", std::to_string(job.value())}});
            }
            const Money owed = desk::owedFor(*found, ledger.jobs().paid(job));
            return Owing{std::move(*found), owed};
        },
        [this](Result<Owing> owing) {
            if (!owing) {
                Q_EMIT refused(owing.error());
                return;
            }
            m_opened = std::move(owing->job);
            m_requestKey = newRequestKey();
            m_owed = owing->owed;
            Q_EMIT openedChanged();
        });
}

void RackPresenter::close() {
    m_opening.cancel();
    m_opened.reset();
    m_owed.reset();
    Q_EMIT openedChanged();
}

void RackPresenter::handOver(const std::optional<Money>& payment, const QString& way, const QString& takenBy,
                             bool onAccount) {
    if (m_handing || !m_opened || !somebodyWorks()) {
        return;
    }
    m_handing = true;
    const desk::HandOver command{*m_opened->id, takenBy.trimmed().toStdString(), payment,
                                 payment ? way.toStdString() : std::string(), by(), onAccount};
    write([command](desk::Transaction& ledger) { return desk::handOver(ledger, command); },
          [this](Result<desk::HandedOver> done) {
              m_handing = false;
              if (!done) {
                  Q_EMIT refused(done.error());
                  return;
              }
              if (m_opened && m_opened->id == done->job.id) {
                  close();
              }
              if (!done->already) {
                  m_lastHandedOver = done->job.id;
              }
              Q_EMIT handedOver(*done);
          },
          [this] { m_handing = false; });
}

void RackPresenter::takePayment(const Money& amount, const QString& way) {
    if (m_handing || !m_opened || !somebodyWorks()) {
        return;
    }
    m_handing = true;
    const desk::TakePayment command{m_requestKey, *m_opened->id, amount, way.toStdString(), by()};
    write([command](desk::Transaction& ledger) { return desk::takePayment(ledger, command); },
          [this](const Result<desk::PaymentTaken>& taken) {
              m_handing = false;
              if (!taken) {
                  Q_EMIT refused(taken.error());
                  return;
              }
              if (m_opened && m_opened->id == taken->job.id) {
                  close();
              }
              Q_EMIT paid(*taken);
          },
          [this] { m_handing = false; });
}

void RackPresenter::giveBack(const Money& amount, const QString& way) {
    if (m_handing || !m_opened || !somebodyWorks()) {
        return;
    }
    m_handing = true;
    const desk::GiveBack command{m_requestKey, *m_opened->id, amount, way.toStdString(), by()};
    write([command](desk::Transaction& ledger) { return desk::giveBack(ledger, command); },
          [this](const Result<desk::GivenBack>& given) {
              m_handing = false;
              if (!given) {
                  Q_EMIT refused(given.error());
                  return;
              }
              if (m_opened && m_opened->id == given->job.id) {
                  close();
              }
              Q_EMIT gaveBack(*given);
          },
          [this] { m_handing = false; });
}

bool RackPresenter::bringBack() {
    if (!m_lastHandedOver) {
        return false;
    }
    if (!somebodyWorks()) {
        return true;
    }
    const desk::BringBack command{*m_lastHandedOver, by()};
    write([command](desk::Transaction& ledger) { return desk::bringBack(ledger, command); },
          [this](const Result<Job>& job) {
              if (!job) {
                  Q_EMIT notDone(job.error());
                  return;
              }
              if (m_lastHandedOver == job->id) {
                  m_lastHandedOver.reset();
              }
              Q_EMIT broughtBack(*job);
          });
    return true;
}

void RackPresenter::tell(JobId job, const QString& how) {
    if (m_telling || !somebodyWorks()) {
        return;
    }
    m_telling = true;
    const desk::TellCustomer command{job, how.toStdString(), by()};
    write([command](desk::Transaction& ledger) { return desk::tellCustomer(ledger, command); },
          [this](const Result<Job>& done) {
              m_telling = false;
              if (done) {
                  Q_EMIT told(*done);
              } else {
                  Q_EMIT notDone(done.error());
              }
          },
          [this] { m_telling = false; });
}

} // namespace rw::ui
