// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/desk_runner.h"
#include "ui/presenter/shift.h"

#include <QObject>
#include <QString>

#include <functional>
#include <string>
#include <type_traits>
#include <utility>

namespace rw::ui {

/// What the presenters of all stations share: asking the ledger without waiting for it, and saying so when it
/// cannot be reached. Nothing typed is ever lost by trouble.
class StationPresenter : public QObject {
    Q_OBJECT

public:
    /// Asks again for everything that is shown. Called whenever the ledger changed, here or elsewhere, and when a
    /// station is entered. What somebody is typing stays as it is.
    virtual void refresh() = 0;

    /// What is wrong with the ledger, as a sentence; "" while it answers.
    [[nodiscard]] const QString& trouble() const { return m_shift.trouble(); }

Q_SIGNALS:
    void actingChanged(); ///< a command of writeOnce() is on its way, or was answered

protected:
    StationPresenter(DeskRunner& runner, Shift& shift, std::string station, QObject* parent);

    [[nodiscard]] Shift& shift() const { return m_shift; }
    [[nodiscard]] By by() const { return m_shift.by(m_station); }
    /// Before anything is written: false when nobody said yet who is working, which is asked then.
    [[nodiscard]] bool somebodyWorks();
    /// A command of writeOnce() is on its way.
    [[nodiscard]] bool isActing() const { return m_acting; }
    /// Before such a command is put together: nothing is on its way, and somebody works.
    [[nodiscard]] bool mayAct() { return !m_acting && somebodyWorks(); }

    /// `failed` is called after the trouble was noted, for whoever must take something back.
    template<class UseCase, class Done>
    desk::CancelToken read(UseCase useCase, Done done, std::function<void()> failed = {}) {
        return call(desk::Access::Read, std::move(useCase), std::move(done), std::move(failed));
    }

    /// What was written makes every presenter refresh, this one too, after `done`. `failed` as in read().
    template<class UseCase, class Done>
    desk::CancelToken write(UseCase useCase, Done done, std::function<void()> failed = {}) {
        m_shift.commandGiven();
        return call(
            desk::Access::Write, std::move(useCase),
            [this, done = std::move(done)](auto result) mutable {
                const bool written = result.has_value();
                done(std::move(result));
                if (written) {
                    m_shift.noteChange();
                }
                m_shift.commandAnswered(written);
            },
            [this, failed = std::move(failed)] {
                if (failed) {
                    failed();
                }
                m_shift.commandAnswered(false);
            });
    }

    /// Writes, unless a command is on its way: what was pressed twice is done once. `done`: void(T), or void() where
    /// the use case gives nothing back; `refused`: void(const Refusal&).
    template<class UseCase, class Done, class Refused>
    void writeOnce(UseCase useCase, Done done, Refused refused) {
        if (m_acting) {
            return;
        }
        m_acting = true;
        write(
            std::move(useCase),
            [this, done = std::move(done), refused = std::move(refused)](auto result) mutable {
                m_acting = false;
                if (!result) {
                    refused(result.error());
                } else if constexpr (std::is_void_v<typename decltype(result)::value_type>) {
                    done();
                } else {
                    done(*result);
                }
                Q_EMIT actingChanged();
            },
            [this] {
                m_acting = false;
                Q_EMIT actingChanged();
            });
        Q_EMIT actingChanged();
    }

private:
    template<class UseCase, class Done>
    desk::CancelToken call(desk::Access access, UseCase useCase, Done done, std::function<void()> failed) {
        return ask(
            m_runner, access, this, std::move(useCase),
            [this, access, done = std::move(done)](auto result) mutable {
                done(std::move(result));
                m_shift.noteAnswer(access);
            },
            [this, access, failed = std::move(failed)](const std::exception_ptr& error) {
                m_shift.noteTrouble(access, error);
                if (failed) {
                    failed();
                }
            });
    }

    DeskRunner& m_runner;
    Shift& m_shift;
    std::string m_station;
    bool m_acting = false;
};

} // namespace rw::ui
