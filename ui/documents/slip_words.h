// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/job_paper.h"
#include "ui/documents/job_card.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

namespace rw::ui {

/// The tag on the racket as words: enough to find it on the rack and to string it when the card is lost.
struct TagWords {
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

} // namespace rw::ui
