// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/cautions.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct Cautions {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};
} // namespace

QStringList benchCautions() {
    return {
        Cautions::tr("Wear eye protection when cutting out and whenever a string can snap."),
        Cautions::tr("Cut old strings from the centre outwards, mains and crosses in turn, "
                     "so that the hoop is not loaded unevenly."),
        Cautions::tr("Look for cracks and worn grommets before work; do not string a cracked frame."),
        Cautions::tr("The frame's marked maximum is the limit its maker stands behind."),
        Cautions::tr("Support the hoop, and do not leave a racket half strung."),
        Cautions::tr("Take care with awl and pliers."),
    };
}

} // namespace rw::ui
