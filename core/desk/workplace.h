// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

// Who works in the shop, and at which machines. Nobody and nothing is deleted: whoever leaves is retired, stays in the
// history, and can be brought back.
namespace rw::desk {

/// Adds a person (without id) or changes one; a person like that who is there already is given back. Missing and
/// TooLong {name}; ImpossibleValue {key: name} for a name that somebody else here has, {key: hours} for hours that run
/// backwards or a week without any, {key: retired, text, expected} when nobody would be left; ChangedMeanwhile when
/// another station changed them since they were read; NotFound. Days off are kept sorted, each once.
[[nodiscard]] Result<StaffMember> keepPerson(Transaction& ledger, const StaffMember& wanted);

/// The same of a machine. Also OutOfRange {step, reach}; ImpossibleValue {key: retired} when it is the last one or a
/// racket is on it.
[[nodiscard]] Result<Machine> keepMachine(Transaction& ledger, const Machine& wanted);

} // namespace rw::desk
