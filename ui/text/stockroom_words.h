// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

#include <string>
#include <vector>

// What the stockroom says: of a delivery, of what was done to a lot, of a lot's whole life.
namespace rw::ui {

/// "K-8", "K-8 and K-9", "K-8 to K-12": tags that belong together, as few words as say all of them.
[[nodiscard]] QString tagsText(const std::vector<std::string>& tags);

/// What came in, and what to write on what: "Received 3 reels and 12 packets. Write K-8, K-9 and L-4 on the reels.
/// Packets that are alike are one pile and need no tag."
[[nodiscard]] QString deliveredText(const std::vector<Lot>& lots, const QLocale& locale = QLocale());
/// "3 reels and 12 packets: £468.00, with shipping £483.00", to be held against the bill; "" for no line.
[[nodiscard]] QString parcelText(const std::vector<desk::DeliveryLine>& lines, const Money& shipping,
                                 const QLocale& locale = QLocale());

/// "K-2 is thrown away: 0.4 m. Ctrl+Z takes that back."
[[nodiscard]] QString tookOffText(const Lot& lot, Length gone, desk::LotLeaves how, const QLocale& locale = QLocale());
/// "K-2 is on the shelf again with 0.4 m." "K-8 and K-9 never came."
[[nodiscard]] QString tookBackText(const std::vector<Lot>& lots, const QLocale& locale = QLocale());

/// "Gone: K Larkspun 130"
[[nodiscard]] QString closedLotsTitle(const QString& string);
/// "used up · batch 4471", "thrown away · kept for Petra Lindobi": how a lot went.
[[nodiscard]] QString closedLotText(const desk::ClosedLot& closed);
[[nodiscard]] QString nothingClosedText();

/// "K-2 holds 6.4 m by the book. Enter corrects it, Esc goes back."
[[nodiscard]] QString correctHintText(const Lot& lot, const QLocale& locale = QLocale());
/// "K-2, 6.4 m: Enter takes it off the shelf, Esc goes back."
[[nodiscard]] QString takeOffHintText(const Lot& lot, const QLocale& locale = QLocale());
/// Why an end is thrown away that is too short for anything.
[[nodiscard]] QString tooShortToKeepText();
/// "K-9 is kept for Petra Lindobi: 100 m. Write K-9 on it."
[[nodiscard]] QString keptForText(const Lot& lot, const QString& owner, const QLocale& locale = QLocale());

[[nodiscard]] QString packetHintText(); ///< beside what a packet holds and costs
[[nodiscard]] QString statementCopiedText();
[[nodiscard]] QString stringAddedText(const QString& title);
[[nodiscard]] QString stringKeptText(const QString& title);
[[nodiscard]] QString emptyShelfText();
[[nodiscard]] QString noStringYetText();     ///< there is none that could have come in
[[nodiscard]] QString whoseStringText();     ///< nobody was picked
[[nodiscard]] QString whichStringCameText(); ///< a delivery without a line
[[nodiscard]] QString shelfHintText();       ///< where no lot is looked at

[[nodiscard]] QString packetsText(int packets);                                     ///< "5 packets"
[[nodiscard]] QString eachOfText(Length length, const QLocale& locale = QLocale()); ///< "of 12 m"
/// "kept here, L Larkspun 130": below its owner's name.
[[nodiscard]] QString keptBoardText(const QString& title);
/// "kept for Petra Lindobi: L Larkspun 130".
[[nodiscard]] QString keptBoardText(const QString& owner, const QString& title);
/// "5 packets of 12 m, 1 promised" for a pile; "remnant, 5.8 m"; "200 m" for anything else.
[[nodiscard]] QString heldThereText(const desk::ShelfLot& there, const QLocale& locale = QLocale());
/// "a packet of 12 m, 5 free", where it is chosen for a job.
[[nodiscard]] QString packetChoiceText(const desk::ShelfLot& pile, const QLocale& locale = QLocale());
/// The same at length, with what is promised and how many jobs are in it.
[[nodiscard]] QString lotThereText(const desk::ShelfLot& there, const QLocale& locale = QLocale());

/// What the shop paid is the owner's to see.
enum class Paid { Shown, Hidden };
/// "Reel of 200 m, batch A41, came Thu 12 Mar from Northgate, £110.00 and £4.50 shipping."
[[nodiscard]] QString lotFactsText(const desk::LotLife& life, const QTimeZone& zone, Paid paid,
                                   const QLocale& locale = QLocale());
/// "4 cuts, 44.8 m; 1 of them lost, 11.2 m. 155.2 m left."
[[nodiscard]] QString lotSumText(const desk::LotLife& life, const QLocale& locale = QLocale());
/// A customer's reel, line by line, for its owner: what it held, each cut with its job, what is left.
[[nodiscard]] QString lotStatementText(const desk::LotLife& life, const QTimeZone& zone,
                                       const QLocale& locale = QLocale());

/// What a movement was, without its length: "cut for job 2119", "measured", "lost: kinked".
[[nodiscard]] QString movementKindText(const Movement& movement, std::int64_t jobNumber);
/// "takes back line 3; the tape slipped": what it corrects, what corrects it, and why. Lines count from 1; 0: none.
[[nodiscard]] QString movementWhyText(const Movement& movement, int corrects, int correctedBy);

} // namespace rw::ui
