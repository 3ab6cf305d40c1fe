// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/promise.h"
#include "core/desk/consent.h"
#include "core/desk/port/ledger.h"
#include "core/desk/reel_choice.h"
#include "core/length/cut_plan.h"
#include "core/length/packet.h"
#include "core/pricing/quote.h"
#include "core/stock/shelf.h"

#include <optional>
#include <string>
#include <vector>

// Taking a racket in: what the counter shows while somebody types, and logging it.
namespace rw::desk {

struct WantedString {
    StringArticleId article;
    PieceSource source = PieceSource::ShopLot;
    std::optional<LotId> lot; ///< pinned by somebody; nothing: the shop proposes one. A packet stands for
                              ///< those like it: one that is promised gives way to the next
    std::optional<Length> setLength = std::nullopt; ///< of a customer's own set, > 0, where somebody said it
};

/// One string from one place: only then can both halves of a bed be one piece.
[[nodiscard]] bool isOneString(const WantedString& mains, const WantedString& crosses);

/// What has been typed so far. A frame is enough for a plan; the customer comes when it is logged.
struct IntakeDraft {
    FrameModelId frame;
    std::optional<RacketId> racket; ///< whose history counts
    std::optional<Method> method;   ///< nothing: as last time, else the sport's usual one
    std::optional<std::string> route;
    std::optional<Side> shortSide; ///< nothing: as SideFrom says; a frame that forces its side wins even over a choice
    WantedString mains;
    std::optional<WantedString> crosses; ///< nothing: the same string as the mains
    TensionPair tensions;
    std::vector<std::pair<std::string, int>> extras;
    bool rush = false;
    std::optional<Discount> discount = std::nullopt;
    std::optional<Instant> mustBy = std::nullopt; ///< when the customer must have it: compared, and kept with the job
};

/// Where a proposed cut comes from.
/// OwnCuts: by the model, with what the shop's cuts on this frame said. OtherFrames: by the model, no cut of this frame
/// telling, put right by what other frames' tails said. Packet: what a packet that is used up gives this piece.
enum class CutFrom { LastTime, UsualCut, OwnCuts, OtherFrames, Geometry, Packet };

struct PieceProposal {
    PieceRole role;
    StringArticle article;
    PieceSource source;
    std::optional<Lot> lot; ///< nothing: no lot holds it
    Length cut;
    Length expected;
    CutFrom cutFrom;
    std::optional<Length>
        cameShortAt; ///< set when that came short on this frame lately and the cut was raised above it
    Fit fit = Fit::Fits;
    Length leavesOnLot;                             ///< by the book, after this and everything planned there
    Holding holding;                                ///< of the string, before this job
    Length freeAfter;                               ///< of the string, with this job promised
    std::optional<Length> setLength = std::nullopt; ///< of a customer's own set, where somebody said it
    CutReason why = {};                             ///< that lot; says nothing of a packet
};

/// Why the short side is where it is: the frame forces it, it was chosen, as on this racket last time, as on another
/// racket of the same customer, or the shop's usual one. The first of these that speaks wins.
enum class SideFrom { Frame, Chosen, LastTime, Twin, Usual };

struct ShortSideProposal {
    Side side;
    SideFrom from;
    std::string because;        ///< the frame's reason, or the twin's mark (its frame's name where it has none)
    bool againstChoice = false; ///< somebody chose the other side and the frame's word stands: the one thing to warn of
    std::string mountingMark;
    Length measure;
    double headLengths;
    int topCrosses = 0; ///< how many top crosses go on the short side
};

/// What does better than a set that is tight or not enough: the whole bed in one piece, crosses that start at a clamp
/// instead of a knot, or the mains alone from the set and the crosses of other string.
enum class SetAdvice { OnePiece, StartingClamp, OtherCrosses };

/// Whether a customer's own set, or a packet of the shop's, does what it is meant for, told before the old strings come
/// out.
struct OwnSet {
    struct Way {
        SetAdvice advice;
        Length need;
        length::PacketVerdict verdict; ///< better than that of the wish
    };
    PieceRole first; ///< the piece that is cut from it first: mains, crosses or the whole
    Length length;
    Length need; ///< what is meant to come from it should need together
    length::PacketVerdict verdict;
    std::optional<Way> better;
    bool shops = false; ///< a packet off the shelf
};

struct IntakePreview {
    length::CutPlan plan;
    std::vector<PieceProposal> pieces;
    std::vector<OwnSet> ownSets; ///< those whose length is known, and the packet that the whole bed comes from
    std::optional<ShortSideProposal> shortSide;
    Quote quote;
    Instant promise;
    bool afterMustBy = false; ///< the promise is later than the customer must have it
    bool aboveMarked = false; ///< the highest pull is above the frame's marked maximum
    std::optional<Tension> highestMarked;
};

/// Refusals: NotFound, RouteDoesNotFit, RouteUnknown, ImpossibleValue (one piece of two strings), Missing (a price, the
/// reason of a discount), OutOfRange (a discount, a count), and of a pinned lot WrongLot and LotClosed. NoLot is not
/// one: a piece may be without a lot.
[[nodiscard]] Result<IntakePreview> previewIntake(Transaction& ledger, const IntakeDraft& draft, Instant now);

struct LogJob {
    std::string requestKey; ///< made once per intake; pressing twice logs once
    CustomerId customer;
    RacketId racket;
    IntakeDraft draft;
    std::string note;
    std::optional<Instant> promised; ///< nothing: what was told, or the earliest
    By by;
    Inspection inspection = {};
    std::optional<InformedYes> yes = std::nullopt; ///< to a pull above the marked maximum; kept only when there is one
    /// The promise that was read out to the customer: it stands where the work can still be done by then.
    std::optional<Instant> told = std::nullopt;
};

/// Logs the job, or gives back the one that the same request key logged before. ChangedMeanwhile {what, job} when that
/// one was logged with another wish: nobody may believe that the new wish counts.
[[nodiscard]] Result<Job> logJob(Transaction& ledger, const LogJob& command);

} // namespace rw::desk
