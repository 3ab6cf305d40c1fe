// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <string_view>

// What every use case begins with: the rows it speaks of, or a refusal that names what is not there.
namespace rw::desk {

/// NotFound {what, text}.
[[nodiscard]] Result<Job> jobOf(Transaction& ledger, JobId id);
[[nodiscard]] Result<Customer> customerOf(Transaction& ledger, CustomerId id);
/// The same of somebody for whom something is to be done: NotFound too once they were removed.
[[nodiscard]] Result<Customer> presentCustomerOf(Transaction& ledger, CustomerId id);
[[nodiscard]] Result<Racket> racketOf(Transaction& ledger, RacketId id);
[[nodiscard]] Result<FrameModel> frameOf(Transaction& ledger, FrameModelId id);
[[nodiscard]] Result<StringArticle> articleOf(Transaction& ledger, StringArticleId id);
[[nodiscard]] Result<Lot> lotOf(Transaction& ledger, LotId id);
[[nodiscard]] Result<Machine> machineOf(Transaction& ledger, MachineId id);
[[nodiscard]] Result<JobPiece> pieceOf(const Job& job, PieceRole role);

/// Whether `kind` may happen to the job now: WrongState {job, state, wanted}.
[[nodiscard]] Result<void> mayHappen(const Job& job, JobEventKind kind);

/// Whether the job is still to be strung, so that what was agreed for it can change: WrongState {job, state, wanted}.
[[nodiscard]] Result<void> mayStillChange(const Job& job);

/// Words as they are kept: without white space around them, and without characters that turn the direction of writing.
/// Missing {what} when nothing is left, TooLong {what,
/// length, most} beyond `most` characters (code points), Unreadable {what, text} for bytes that are no text.
[[nodiscard]] Result<std::string> wordsOf(std::string_view what, std::string_view typed, std::int64_t most);
/// The same, but nothing is allowed too.
[[nodiscard]] Result<std::string> maybeWordsOf(std::string_view what, std::string_view typed, std::int64_t most);

constexpr Length kLongestLot = Length::fromMillimetres(1'000'000); ///< far beyond any reel: what is longer was mistyped
/// A length that a lot can have: OutOfRange {what, text, lowest, highest} below `lowest` or beyond kLongestLot.
[[nodiscard]] Result<void> checkLength(std::string_view what, Length length, Length lowest);

constexpr std::int64_t kLongestName = 200;
constexpr std::int64_t kLongestPlaceName = 80; ///< of a person who works here, or of a machine
constexpr std::int64_t kLongestFrameName = 80;
constexpr std::int64_t kLongestMark = 40;
constexpr std::int64_t kLongestTag = 20;
constexpr std::int64_t kLongestNote = 2000;
constexpr std::int64_t kLongestSetting = 10'000;
constexpr std::int64_t kLongestRequestKey = 100;

} // namespace rw::desk
