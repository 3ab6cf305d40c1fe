// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/model/list_model.h"

#include <optional>

namespace rw::ui {

/// One line of a search for people: somebody who was found, or at the end the offer to add who was not.
struct PeopleRow {
    std::optional<desk::PersonFound> person;
    QString typed; ///< what a new person would start with
};

class PeopleModel final : public ListModel<PeopleRow> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    /// `found` and, when something was typed, the offer to add it.
    void setFound(const std::vector<desk::PersonFound>& found, const QString& typed);

protected:
    [[nodiscard]] QVariant show(const PeopleRow& row, int role) const override;
};

} // namespace rw::ui
