// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"

#include <QLocale>
#include <QString>

#include <exception>

// What the program says when it cannot do what it was asked. Each is one whole sentence that names what is
// wrong and, where there is one, the way on.
namespace rw::ui {

[[nodiscard]] QString sentenceFor(const Refusal& refusal, const QLocale& locale = QLocale());

/// For a broken world: says what happened and what was kept. `error` must hold an exception.
[[nodiscard]] QString sentenceFor(const std::exception_ptr& error);

/// A text somebody typed, quoted and short enough for a sentence: at most 60 characters, control characters taken out.
[[nodiscard]] QString quoted(const QString& typed);

} // namespace rw::ui
