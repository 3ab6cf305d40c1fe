// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "ui/model/list_model.h"

namespace rw::ui {

/// What is still open, oldest first: whose racket it is, what is still to be done with it, and how long it has been
/// ready.
class OpenMatterModel final : public ListModel<desk::OpenMatter> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    void setNow(Instant now) { m_now = now; } ///< takes effect with the next rows
    [[nodiscard]] int rowOf(JobId job) const; ///< -1 when it is not there

protected:
    [[nodiscard]] QVariant show(const desk::OpenMatter& matter, int role) const override;

private:
    Instant m_now{};
};

} // namespace rw::ui
