// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/mass.h"
#include "ui/widgets/parsed_edit.h"

namespace rw::ui {

/// What a scale shows: "236", "236,4 g", "0.236 kg". A bare number is grams, so that a scale may type it.
class MassEdit final : public ParsedEdit<Mass> {
    Q_OBJECT

public:
    explicit MassEdit(QWidget* parent = nullptr);
};

} // namespace rw::ui
