// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace rw {

/// Why something was refused. A code says what is wrong; ui/text turns it into a sentence.
enum class Code {
    // what somebody typed
    Unreadable,        ///< {what, text}: cannot be read as that kind of value
    OutOfRange,        ///< {what, text, lowest, highest}
    TooFine,           ///< {what, text}: more decimals than are kept
    NothingToChange,   ///< {what, text}: "-2 lb" without an old value
    Missing,           ///< {what}
    TooLong,           ///< {what, length, most}
    UnknownKey,        ///< {key, known}
    WrongType,         ///< {key, expected}
    ImpossibleValue,   ///< {key, text, expected}
    // the trade
    RouteDoesNotFit,   ///< {route, reason, fits}
    RouteUnknown,      ///< {route, known}
    StartEndUnknown,   ///< {route}
    NotEnoughString,   ///< {lot, lengthMm, wantedMm}
    NoLot,             ///< {string}
    WrongLot,          ///< {lot, string}: the lot holds another string, or belongs to somebody else
    LotClosed,         ///< {lot}
    MeasureFirst,      ///< {lot, lengthMm, wantedMm}: the book says it does not fit
    WrongState,        ///< {job, state, wanted}
    AlreadyCut,        ///< {job, piece, attempt, lengthMm, lot}
    NotCut,            ///< {job, piece}
    StaleAttempt,      ///< {job, piece, attempt}
    RacketStillHere,   ///< {jobs, lots}: numbers and tags of what somebody who is to be removed still has here
    ChangedMeanwhile,  ///< {what, mine, theirs}, or {what, job}: logged with another wish
    NotFound,          ///< {what, text}
    CurrencyMismatch,  ///< {left, right}
    // the ledger, before it is opened
    LedgerForeign,     ///< {ledger, reason}
    LedgerNewer,       ///< {ledger, found, known}
    LedgerDamaged,     ///< {ledger, reason}
    LedgerUnreachable, ///< {ledger, reason}
    LedgerNotWritable, ///< {ledger, reason}
    LedgerEncoding,    ///< {ledger, found}
    LedgerOnNetwork,   ///< {ledger, filesystem}
    // files other than the ledger
    FileUnreadable,    ///< {file, reason}
    FileUnwritable,    ///< {file, reason}
};

/// A named fact that belongs to a refusal. Lengths are whole millimetres, money minor units.
struct Argument {
    std::string name;
    std::variant<std::int64_t, double, std::string> value;
    bool operator==(const Argument&) const = default;
};

/// A refusal is an answer, not a failure of the program: bad input, not enough string, wrong state.
class Refusal {
public:
    explicit Refusal(Code code, std::vector<Argument> arguments = {})
        : m_code(code)
        , m_arguments(std::move(arguments)) {}

    [[nodiscard]] Code code() const { return m_code; }
    [[nodiscard]] const std::vector<Argument>& arguments() const { return m_arguments; }
    /// The named argument as text ("" when it is not there).
    [[nodiscard]] std::string text(std::string_view name) const;
    /// The named argument as a whole number (0 when it is not there or not one).
    [[nodiscard]] std::int64_t number(std::string_view name) const;

    bool operator==(const Refusal&) const = default;

private:
    Code m_code;
    std::vector<Argument> m_arguments;
};

} // namespace rw
