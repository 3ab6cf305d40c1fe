// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "ui/presenter/books_presenter.h"

#include <type_traits>
#include <utility>

namespace rw::ui {

/// What the presenters of the pages share on which the owner sets the shop up.
class SetUpPresenter : public BooksPresenter {
    Q_OBJECT

public:
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

Q_SIGNALS:
    void changed(); ///< what is shown was read, or read anew
    void refused(const rw::Refusal& why);

protected:
    using BooksPresenter::BooksPresenter;

    /// Reads what is shown and takes it over: `take` (void(T)).
    template<class UseCase, class Take>
    desk::CancelToken show(UseCase useCase, Take take) {
        return read(std::move(useCase), [this, take = std::move(take)](auto result) mutable {
            if (result) {
                take(std::move(*result));
                m_loaded = true;
                Q_EMIT changed();
            } else {
                Q_EMIT refused(result.error());
            }
        });
    }

    /// Writes, unless something is being written: what was pressed twice is done once. Tells of a refusal.
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done) {
        if (m_acting) {
            return;
        }
        m_acting = true;
        write(
            std::move(useCase),
            [this, done = std::move(done)](auto result) mutable {
                m_acting = false;
                if (!result) {
                    Q_EMIT refused(result.error());
                } else if constexpr (std::is_void_v<typename decltype(result)::value_type>) {
                    done();
                } else {
                    done(*result);
                }
            },
            [this] { m_acting = false; });
    }

private:
    bool m_loaded = false;
    bool m_acting = false;
};

} // namespace rw::ui
