// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/export_presenter.h"

#include "core/base/world_error.h"
#include "core/desk/owner.h"
#include "ui/text/sentences.h"

namespace rw::ui {

namespace {
constexpr std::chrono::milliseconds kLookEvery{200}; ///< often enough that a bar seems to move
} // namespace

ExportPresenter::ExportPresenter(DeskRunner& runner, Shift& shift, const TableFiles& files,
                                 std::chrono::milliseconds patience, QObject* parent)
    : StationPresenter(runner, shift, "books", parent)
    , m_files(files)
    , m_patience(patience) {
    connect(&m_look, &QTimer::timeout, this, [this] {
        m_slow = true;
        m_look.start(kLookEvery);
        Q_EMIT progressed();
    });
}

int ExportPresenter::filesDone() const { return m_progress ? m_progress->done.load() : 0; }

int ExportPresenter::filesInAll() const { return m_progress ? m_progress->inAll.load() : 0; }

Result<ExportPresenter::Outcome> ExportPresenter::writeAll(desk::Transaction& ledger, const TableFiles& files,
                                                           const QString& folder, bool forOwner, Progress& progress) {
    const auto tables = desk::everything(ledger, forOwner);
    if (!tables) {
        return tl::unexpected<Refusal>(tables.error());
    }
    const Currency currency = ledger.shop().currency();
    progress.inAll = static_cast<int>(tables->size());
    const auto goOn = [&progress](int done) {
        progress.done = done;
        return !progress.stop;
    };
    Outcome outcome{.written = {folder, static_cast<int>(tables->size()), 0}, .trouble = {}};
    for (const desk::LedgerTable& table : *tables) {
        outcome.written.rows += static_cast<std::int64_t>(table.rows.size());
    }
    try {
        const auto all = files.write(folder, *tables, currency, goOn);
        if (!all) {
            return tl::unexpected<Refusal>(all.error());
        }
        outcome.stopped = !*all;
    } catch (const FileLost&) {
        // A disk that gives way is no trouble of the ledger's.
        outcome.trouble = sentenceFor(std::current_exception());
    }
    return outcome;
}

void ExportPresenter::begin(const QString& folder, bool forOwner) {
    if (isUnderWay()) {
        return;
    }
    m_progress = std::make_shared<Progress>();
    m_slow = false;
    m_look.start(m_patience);
    Q_EMIT progressed();
    const auto progress = m_progress;
    read([&files = m_files, folder, forOwner,
          progress](desk::Transaction& ledger) { return writeAll(ledger, files, folder, forOwner, *progress); },
         [this](const Result<Outcome>& outcome) {
             end();
             if (!outcome) {
                 Q_EMIT refused(sentenceFor(outcome.error()));
             } else if (!outcome->trouble.isEmpty()) {
                 Q_EMIT refused(outcome->trouble);
             } else if (outcome->stopped) {
                 Q_EMIT stopped();
             } else {
                 Q_EMIT written(outcome->written);
             }
         },
         [this] { end(); });
}

void ExportPresenter::stop() {
    if (isUnderWay()) {
        m_progress->stop = true;
    }
}

void ExportPresenter::end() {
    m_progress.reset();
    m_look.stop();
    m_slow = false;
    Q_EMIT progressed();
}

} // namespace rw::ui
