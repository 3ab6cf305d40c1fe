// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/palette.h"
#include "ui/widgets/application_look.h"

#include <QApplication>

#include <gtest/gtest.h>

// A GoogleTest program with windows: one application without a screen, looking as the desktop does.
int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application(argc, argv);
    rw::ui::lookLikeReelwright(application, rw::ui::Palette::light());
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
