// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/tagged_job.h"
#include "ui/model/list_model.h"

#include <optional>

namespace rw::ui {

/// One line of a search for people: the job whose tag bears the number that was typed, somebody who was found, or at
/// the end the offer to add who was not.
struct PeopleRow {
    std::optional<desk::PersonFound> person;
    QString typed; ///< what a new person would start with
    std::optional<desk::TaggedJob> tagged = std::nullopt;
};

class PeopleModel final : public ListModel<PeopleRow> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    /// `found` and, when something was typed, the offer to add it. A tagged racket that is in the shop comes first:
    /// what is asked for by its number is here. An older number comes after those whose phone number holds it.
    void setFound(const std::vector<desk::PersonFound>& found, const QString& typed,
                  const std::optional<desk::TaggedJob>& tagged = std::nullopt);
    [[nodiscard]] std::optional<int> taggedRow() const; ///< nothing: no tag has that number

protected:
    [[nodiscard]] QVariant show(const PeopleRow& row, int role) const override;
};

} // namespace rw::ui
