// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/qt_folder_chooser.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>

namespace rw::ui {

QString QtFolderChooser::chooseFolder(const QString& title) {
    const QString chosen = QFileDialog::getExistingDirectory(QApplication::activeWindow(), title,
                                                             m_last.isEmpty() ? QDir::homePath() : m_last);
    if (!chosen.isEmpty()) {
        m_last = chosen;
    }
    return chosen;
}

} // namespace rw::ui
