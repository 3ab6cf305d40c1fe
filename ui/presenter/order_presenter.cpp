// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/order_presenter.h"

#include "core/base/world_error.h"
#include "core/desk/owner.h"
#include "ui/text/sentences.h"

namespace rw::ui {

namespace {
/// A disk that gives way is no trouble of the ledger's: what to say of it; "" when all went well.
Result<QString> writeOrder(desk::Transaction& ledger, const TableFiles& files, const QString& folder, bool forOwner,
                           Instant now) {
    const auto drafts = desk::orderDrafts(ledger, now);
    if (!drafts) {
        return tl::unexpected<Refusal>(drafts.error());
    }
    const desk::LedgerTable all = desk::orderTable(*drafts);
    try {
        const auto written = files.write(folder, {forOwner ? all : desk::withoutOwnersColumns(all)},
                                         ledger.shop().currency(), [](int) { return true; });
        return written ? Result<QString>(QString()) : tl::unexpected<Refusal>(written.error());
    } catch (const FileLost&) {
        return sentenceFor(std::current_exception());
    }
}
} // namespace

OrderPresenter::OrderPresenter(DeskRunner& runner, Shift& shift, const TableFiles& files, QObject* parent)
    : StationPresenter(runner, shift, "stockroom", parent)
    , m_files(files) {}

void OrderPresenter::refresh() {
    read([now = shift().now()](desk::Transaction& ledger) { return desk::orderDrafts(ledger, now); },
         [this](Result<std::vector<desk::OrderDraft>> drafts) {
             if (drafts) {
                 m_drafts = *std::move(drafts);
                 m_loaded = true;
                 Q_EMIT draftsChanged();
             }
         });
}

void OrderPresenter::save(const QString& folder, bool forOwner) {
    if (m_saving) {
        return;
    }
    m_saving = true;
    read([&files = m_files, folder, forOwner,
          now = shift().now()](desk::Transaction& ledger) { return writeOrder(ledger, files, folder, forOwner, now); },
         [this, folder](const Result<QString>& trouble) {
             m_saving = false;
             if (!trouble) {
                 Q_EMIT notSaved(sentenceFor(trouble.error()));
             } else if (!trouble->isEmpty()) {
                 Q_EMIT notSaved(*trouble);
             } else {
                 Q_EMIT saved(folder);
             }
         },
         [this] { m_saving = false; });
}

} // namespace rw::ui
