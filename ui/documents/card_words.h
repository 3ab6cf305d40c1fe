// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "ui/documents/job_card.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace rw::ui {

/// A job card as words, in the order in which they are read. Where they stand is the layout's business.
struct CardWords {
    QString number; ///< the tag on the racket
    QString state;
    QString customer;
    QString racket;  ///< frame and mark
    QString promise; ///< "" without one

    struct Notice {
        bool warns = false;
        QString words;
    };
    std::vector<Notice> notices; ///< what to know first, the warnings before the rest
    struct Step {
        QString shape; ///< "✓", "▸", "○"
        QString word;
        bool current = false;
    };
    std::vector<Step> steps; ///< while it is on the machine
    QString hands;           ///< who has it, or had it

    struct Pull {
        QString name;       ///< "mains"
        QString number;     ///< "52"
        QString unit;       ///< "lb"
        QString dial;       ///< "23.5 or 24 kg", "" without a machine
        QString detail;     ///< "52 lb is 23.59 kg; 23.5 is 51.8 lb, 24 is 52.9 lb"
        QString was = {};   ///< what was asked before a change that nobody has nodded to: "54 lb"
        bool quiet = false; ///< not the one that is strung now
    };
    std::vector<Pull> pulls; ///< mains, crosses; while the crosses are strung theirs stand first
    QString machine;         ///< "Bench B"
    QString marked;          ///< "marked 50 to 60 lb"

    struct Cut {
        bool done = false;
        bool careful = false; ///< `source` is a warning
        QString length;       ///< "10.8 m"
        QString piece;        ///< "one piece"
        QString string;       ///< "Larkspun 130, natural, 1.3 mm"
        QString source;       ///< "off L-3, leaves 5.5 m"
        QString lost;         ///< "5.6 m lost, came short", "" when nothing was
    };
    std::vector<Cut> cuts;

    QString shortSide;       ///< "left", "" for two pieces
    QString shortSideMark;   ///< "butt-cap logo up"
    QString shortSideLength; ///< "3 m = 8½ head lengths, one top cross"
    QString shortSideFrom;   ///< "as usual here"
    bool shortSideWarns = false;

    QString needs; ///< "needs about 10.43 m by 7 cuts here, 5 with tails"
    QString routeName;
    QStringList route;
    QString note;
    QString inspection; ///< what came with it and what was seen, "" when nothing was noted
    QString strung; ///< "strung 23.5/22.5 kg on Bench B by Bastian Quill", "" before
    QStringList cautions;
};

[[nodiscard]] CardWords cardWords(const desk::JobCard& card, const JobCardStyle& style);

} // namespace rw::ui
