// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "ui/presenter/books_presenter.h"

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

    /// Writes once, and tells of a refusal.
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done) {
        writeOnce(std::move(useCase), std::move(done), [this](const Refusal& why) { Q_EMIT refused(why); });
    }

private:
    bool m_loaded = false;
};

} // namespace rw::ui
