// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/table_files.h"
#include "ui/presenter/station_presenter.h"

#include <QString>
#include <QTimer>

#include <atomic>
#include <chrono>
#include <memory>
#include <optional>

namespace rw::ui {

/// Everything that the ledger holds, written to files. It is read and written on the ledger's thread; how far it is
/// stands here once it takes longer than somebody likes to wait, and it can be stopped at any time.
class ExportPresenter final : public StationPresenter {
    Q_OBJECT

public:
    /// `patience`: how long it may take before its progress is told.
    ExportPresenter(DeskRunner& runner, Shift& shift, const TableFiles& files, std::chrono::milliseconds patience,
                    QObject* parent = nullptr);

    void refresh() override {} ///< nothing is shown that could be old

    /// Without what is for the owner alone unless `forOwner`. One at a time.
    void begin(const QString& folder, bool forOwner);
    /// Between two files; answered by stopped(), or by written() when it was too late.
    void stop();
    [[nodiscard]] bool isUnderWay() const { return m_progress != nullptr; }
    [[nodiscard]] bool isSlow() const { return m_slow; } ///< it is under way for longer than the patience
    [[nodiscard]] int filesDone() const;
    [[nodiscard]] int filesInAll() const; ///< 0: not known yet

    struct Written {
        QString folder;
        int files = 0;
        std::int64_t rows = 0;
    };

Q_SIGNALS:
    void progressed();
    void written(const rw::ui::ExportPresenter::Written& what);
    void stopped();                        ///< nothing was written
    void refused(const QString& sentence); ///< why nothing was written

private:
    struct Progress {
        std::atomic<int> done{0};
        std::atomic<int> inAll{0};
        std::atomic<bool> stop{false};
    };
    struct Outcome {
        Written written;
        bool stopped = false;
        QString trouble; ///< the disk gave way: what to say
    };
    static Result<Outcome> writeAll(desk::Transaction& ledger, const TableFiles& files, const QString& folder,
                                    bool forOwner, Progress& progress);
    void end();

    const TableFiles& m_files;
    QTimer m_look;
    std::chrono::milliseconds m_patience;
    std::shared_ptr<Progress> m_progress; ///< nothing: none is under way
    bool m_slow = false;
};

} // namespace rw::ui
