// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/ledger_thread.h"
#include "core/desk/port/ledger.h"

#include <QPointer>

#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

namespace rw::ui {

/// Runs use cases somewhere else and brings their values back to the thread that asked. Presenters know the ledger
/// only through this. Answers come back in the order they were asked for.
class DeskRunner {
public:
    using Work = std::function<Result<void>(desk::Transaction&)>;
    using Done = std::function<void(Result<void>)>;
    using Failed = std::function<void(std::exception_ptr)>;

    virtual ~DeskRunner() = default;

    /// `work` runs in one transaction; exactly one of `done` and `failed` is called back, none once cancelled.
    virtual void run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) = 0;
    /// From now on calls `changed` when somebody else wrote to the ledger, or it was lost or opened anew.
    virtual void watchChanges(std::function<void()> changed) = 0;
};

/// Runs a use case for `who` and calls `done` with its Result, or `failed` when the world broke. Nothing is called
/// once `who` is gone or the returned token is cancelled. `useCase`: Result<T>(desk::Transaction&).
template<class UseCase, class Done>
desk::CancelToken ask(DeskRunner& runner, desk::Access access, QObject* who, UseCase useCase, Done done,
                      DeskRunner::Failed failed) {
    using Value = typename std::invoke_result_t<UseCase, desk::Transaction&>::value_type;
    desk::CancelToken token;
    const QPointer<QObject> asker(who);
    auto whenFailed = [asker, token, failed = std::move(failed)](std::exception_ptr error) {
        if (asker && !token.isCancelled()) {
            failed(std::move(error));
        }
    };
    if constexpr (std::is_void_v<Value>) {
        runner.run(
            access, token, std::move(useCase),
            [asker, token, done = std::move(done)](Result<void> result) mutable {
                if (asker && !token.isCancelled()) {
                    done(std::move(result));
                }
            },
            std::move(whenFailed));
    } else {
        // A writing use case may run more than once; the last run's value is the one that was committed.
        auto value = std::make_shared<std::optional<Value>>();
        runner.run(
            access, token,
            [value, useCase = std::move(useCase)](desk::Transaction& ledger) -> Result<void> {
                auto result = useCase(ledger);
                if (!result) {
                    return tl::unexpected<Refusal>(std::move(result).error());
                }
                value->emplace(std::move(*result));
                return {};
            },
            [asker, token, value, done = std::move(done)](Result<void> result) mutable {
                if (!asker || token.isCancelled()) {
                    return;
                }
                if (!result) {
                    done(Result<Value>(tl::unexpected<Refusal>(std::move(result).error())));
                } else {
                    done(Result<Value>(std::move(**value)));
                }
            },
            std::move(whenFailed));
    }
    return token;
}

} // namespace rw::ui
