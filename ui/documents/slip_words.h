// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/job_paper.h"
#include "ui/documents/job_card.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <utility>
#include <vector>

namespace rw::ui {

/// The tag on the racket as words: enough to find it on the rack and to string it when the card is lost.
struct TagWords {
    std::int64_t tag; ///< the number as its code holds it
    QString number;
    QString promise; ///< "" without one
    QString customer;
    QString racket;      ///< frame and mark
    QStringList strings; ///< "Larkspun 130, natural", or two lines that name mains and crosses
    QString pulls;       ///< "52/50 lb"
};
[[nodiscard]] TagWords tagWords(const desk::JobPaper& paper, const JobCardStyle& style);

/// The customer's ticket as words: what was agreed, what it costs, when it is ready.
struct TicketWords {
    std::int64_t tag;
    QString shop;
    QString number;
    QString taken; ///< "taken in Thu 22 Jan 10:40"
    QString customer;
    QString racket;
    QStringList strings;
    QString pulls; ///< "mains 52 lb, crosses 50 lb"
    QString note;
    std::vector<std::pair<QString, QString>> bill; ///< what, and its amount
    QString total;
    QString tax;  ///< "£5.00 tax in it", "" where there is none or it is a line of its own
    QString paid; ///< "paid", "£10.00 paid, £20.00 to pay", "" while nothing was paid
    QString promise;
};
[[nodiscard]] TicketWords ticketWords(const desk::JobPaper& paper, const JobCardStyle& style);

/// The label that stays on the frame as words: what is in it and since when. Precondition of both: it was strung.
struct LabelWords {
    std::int64_t tag;
    QString number;
    QString date; ///< when it was strung: "20 January 2026"
    QStringList strings;
    QString pulls; ///< as strung: "52/50 lb"
    QString shop;
};
[[nodiscard]] LabelWords labelWords(const desk::JobPaper& paper, const JobCardStyle& style);

/// The ready slip as words: for whoever hands the racket over, what to take and what to give back with it.
struct ReadyWords {
    std::int64_t tag;
    QString number;
    QString customer;
    QString racket;
    QString strung; ///< "strung Thu 22 Jan 15:10: 52/50 lb, Larkspun 130, natural"
    QString gives;  ///< "give back: a cover", "" when nothing came with it
    QString owed;   ///< "£21.50 to pay", "nothing to pay"
};
[[nodiscard]] ReadyWords readyWords(const desk::JobPaper& paper, const JobCardStyle& style);

} // namespace rw::ui
