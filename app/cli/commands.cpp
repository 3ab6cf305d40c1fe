// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"

namespace rw::cli {

namespace {
bool never(const Given&) { return false; }
bool always(const Given&) { return true; }
bool withFolder(const Given& given) { return given.has("--out"); }

constexpr Option kJson{"--json", "", "the same facts as JSON, for programs"};
constexpr Option kLedger{"--ledger", "L", "the path of a ledger file, or a postgresql:// address", true};
constexpr Option kNow{"--now", "TIME",
                      "the time it is, as 2026-03-12T10:05 on the shop's clock; by default what the computer says"};
} // namespace

const std::vector<Command>& commands() {
    static const std::vector<Command> kCommands = {
        {"day",
         "play a day of the demo shop and show what counter, bench and stockroom see",
         "A racket is dropped off, its job card opened at the machine, string cut off a reel, the racket strung and "
         "handed over; the reel knows it, and what runs short says so. The demo shop is made in a ledger of its own "
         "that is thrown away afterwards, or in a new one that is named.",
         {{"--out", "DIR", "leave the job card (job-card.pdf) and the head of the frame (head.png) in this folder"},
          {"--ledger", "L", "keep the day in this new ledger"},
          {"--now", "TIME",
           "when the racket comes in, as 2026-03-12T10:05 on the shop's clock; by default the next morning on which "
           "the shop is open"},
          kJson},
         withFolder,
         runDay},
        {"check",
         "prove that a ledger is whole, and name what is not",
         "Every rule of the ledger is held against the stored rows. With a finding the exit code is 1.",
         {kLedger, kJson},
         never,
         runCheck},
        {"demo",
         "fill a new ledger with the demo shop",
         "Harbour Lane Strings, an invented shop with its people, strings, prices, frames and the jobs of its last "
         "weeks. A ledger that holds anything already is refused.",
         {kLedger, kNow, kJson},
         never,
         runDemo},
        {"stock",
         "what every string and reel holds, what is promised, what runs short",
         "",
         {kLedger, kNow, kJson},
         never,
         runStock},
        {"order",
         "what to order, from whom, and why",
         "A draft for each supplier of whose strings one runs short, and what comes along with it. How many is what "
         "costs the year least at the price and the shipping of the last time. Nothing is ordered by itself, and "
         "nothing is written down. Where the shop has an owner's PIN, prices are left out.",
         {kLedger, kNow, {"--csv", "", "the same lines as CSV, for a spreadsheet"}, kJson},
         never,
         runOrder},
        {"weigh",
         "what a scale says a reel still holds, beside the book",
         "The reel's weight tells what is left on it, held against its weight when new or by what a metre of the "
         "string weighs, with twice its uncertainty. A difference from the book of more than three times what both "
         "are sure to is a finding. Nothing is written unless it is asked for: --keep keeps the weighing and the "
         "weights that were told with it, --book corrects the book too. Weighing tells whether the book is right "
         "within a metre, not whether an end does one more cross: that wants a tape.",
         {kLedger,
          {"--lot", "TAG", "the tag of the reel or end", true},
          {"--gross", "GRAMS", "what the scale shows, with the spool", true},
          {"--empty", "GRAMS",
           "what its spool weighs without string; needed once, unless its weight when new is known"},
          {"--new", "GRAMS", "what it weighed when new, with the spool"},
          {"--step", "GRAMS", "the step in which the scale shows; by default the shop's setting"},
          {"--keep", "", "keep the weighing in the ledger"},
          {"--book", "", "keep it, and correct the book by it"},
          {"--by", "NAME", "who weighed; by default the first who works there"},
          kNow,
          kJson},
         never,
         runWeigh},
        {"history",
         "a customer's jobs: string, both tensions asked and strung, lengths",
         "Everybody whose name holds every word, or whose phone number holds the digits. With nobody found the exit "
         "code is 1.",
         {kLedger, {"--customer", "TEXT", "a part of the name, or digits of the phone number", true}, kJson},
         never,
         runHistory},
        {"books",
         "what is open, what came in, what jobs earned",
         "Rackets that are strung and not told, not paid or not collected; the takings of the day and of the month by "
         "way of payment; and what the jobs of the month charged without tax, less the string that was cut for them.",
         {kLedger, kNow, kJson},
         never,
         runBooks},
        {"learn",
         "what the shop's own cuts have taught the length model",
         "For each part of a job how far the whole shop is off the head's measurements, and for each frame and material "
         "what it adds to that: from how many cuts, of how many the tails were told, and how sure it is. Bias, effect "
         "and spread are in % of the need; in JSON they are natural logarithms of need / prediction.",
         {kLedger, kJson},
         never,
         runLearn},
        {"export",
         "everything in a ledger, as CSV files",
         "One file for each kind: customers, contacts, rackets, strings, lots, movements, weighings, jobs, pieces, "
         "charges, payments, and what was asked for when there was none. Lengths are whole millimetres, times are UTC. "
         "The files hold names, phone numbers and what was "
         "paid for reels: keep them where only those may read them who should.",
         {kLedger, {"--out", "DIR", "the folder for them; made when it is not there", true}, kJson},
         never,
         runExport},
        {"card",
         "the job card of a job, as PDF",
         "",
         {kLedger,
          {"--job", "N", "the number on the racket's tag", true},
          {"--out", "FILE.pdf", "where it goes", true},
          {"--machine", "NAME", "show the dial of this machine; by default the one on which the job lies"},
          {"--slip", "KIND",
           "card, tag, ticket, label (stays on the frame) or ready (for the rack); by default the card"},
          {"--paper", "SIZE",
           "A4, A6, A5 and A7 on their side, or off a roll of labels 62x90 and 62x25 (mm); by default what the slip is "
           "made for"},
          kJson},
         always,
         runCard},
        {"cut",
         "a cut plan for a frame that is in no ledger",
         "The file is one JSON object; every key may be left out and then takes the usual value of the sport: sport, "
         "hoop, pattern, points, method, route or ownRoute, shortSide, mains, crosses, ends, stretch, crimp, setMm, "
         "setMeasured, evidence, ceiling, tapeStepMm, costPerMetre, spoiledJobCost. With evidence, earlier jobs on the "
         "frame, the need is corrected by them; with setMm a packet is used up and judged. What stands in each key is "
         "told in the guide, page \"Command line\"; how the lengths are found, on \"How much string\".",
         {{"--input", "FILE.json", "the request; - reads standard input", true}, kJson},
         never,
         runCut},
        {"draw",
         "the head of that frame with every string where the plan lays it, as a picture",
         "The input is the same as for cut. The picture shows the pieces, each in its own line, where each begins and "
         "is tied off, the runs outside the hoop, and which string passes over which.",
         {{"--input", "FILE.json", "the request; - reads standard input", true},
          {"--out", "FILE.svg", "where the picture goes", true},
          kJson},
         always,
         runDraw},
        {"plan",
         "which reel each piece of the queue is cut off, and why",
         "Of a ledger: every job that waits for string, as it is planned, and what is to be said of the reels. Of a shop "
         "that is in no ledger the file is one JSON object with the lots, the pieces and how often each length is "
         "wanted. The plan places as many pieces as it can and then loses the least string in the long run. The keys are "
         "listed in the guide, page \"Command line\".",
         {{"--ledger", "L", "the path of a ledger file, or a postgresql:// address"},
          {"--input", "FILE.json", "the request of a shop without one; - reads standard input"},
          kNow,
          kJson},
         never,
         runPlan},
        {"forecast",
         "when each string of a ledger runs short and runs out, or one of a shop that is in none",
         "Either of a ledger, from its own days, or of a file: one JSON object with the jobs of each day and how long "
         "deliveries took. The answer is at which position to order, and the dates on which the string has run out "
         "with a chance of 10, 50 and 90 %. The keys are listed in the guide, page \"Command line\".",
         {{"--ledger", "L", "the path of a ledger file, or a postgresql:// address"},
          {"--input", "FILE.json", "instead of a ledger, the request; - reads standard input"},
          kNow,
          kJson},
         never,
         runForecast},
    };
    return kCommands;
}

} // namespace rw::cli
