// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

namespace rw {

/// The world is broken: the disk is full, the ledger is gone. Not somebody's input. Thrown, and caught
/// once per user action, where ui/text says it in a sentence.
class WorldError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// The ledger's disk or database has no room. Nothing of the transaction was kept.
class LedgerFull : public WorldError {
public:
    using WorldError::WorldError;
};

/// The ledger cannot be reached any more (file removed, server stopped). Whether the last transaction
/// was kept is not known when the connection broke during the commit.
class LedgerLost : public WorldError {
public:
    using WorldError::WorldError;
};

/// The ledger's contents contradict themselves, or its file is damaged.
class LedgerCorrupt : public WorldError {
public:
    using WorldError::WorldError;
};

/// This user may not write the ledger.
class LedgerReadOnly : public WorldError {
public:
    using WorldError::WorldError;
};

/// Another station holds the ledger. The unit of work retries; thrown when it gave up.
class LedgerBusy : public WorldError {
public:
    using WorldError::WorldError;
};

/// A guard of the ledger (trigger, constraint) refused a write that a rule let through. what() names it.
class LedgerGuard : public WorldError {
public:
    using WorldError::WorldError;
};

/// A file that was being written could not be, and nothing of it was kept: its disk is full or gave way. what() names
/// the file and says why.
class FileLost : public WorldError {
public:
    using WorldError::WorldError;
};

/// The work was cancelled by the person who asked for it. Nothing of the transaction was kept.
class Cancelled : public WorldError {
public:
    Cancelled()
        : WorldError("cancelled") {}
};

} // namespace rw
