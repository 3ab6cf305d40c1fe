// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/rack_presenter.h"

namespace rw::ui {

RackPresenter::RackPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void RackPresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::onTheRack(ledger); },
         [this](Result<std::vector<desk::JobLine>> lines) {
             if (lines) {
                 m_lines = std::move(*lines);
                 m_loaded = true;
                 Q_EMIT linesChanged();
             }
         });
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
            const Money owed = found->total - ledger.jobs().paid(job);
            return Owing{std::move(*found), owed};
        },
        [this](Result<Owing> owing) {
            if (!owing) {
                Q_EMIT refused(owing.error());
                return;
            }
            m_opened = std::move(owing->job);
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

void RackPresenter::handOver(const std::optional<Money>& payment, const QString& way, const QString& takenBy) {
    if (m_handing || !m_opened || !somebodyWorks()) {
        return;
    }
    m_handing = true;
    const desk::HandOver command{*m_opened->id, takenBy.trimmed().toStdString(), payment,
                                 payment ? way.toStdString() : std::string(), by()};
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
              Q_EMIT handedOver(*done);
          },
          [this] { m_handing = false; });
}

} // namespace rw::ui
