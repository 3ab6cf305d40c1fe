// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/guide_window.h"

#include <QFile>
#include <QKeyEvent>
#include <QTextDocument>
#include <QUrl>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
QString pagePath(const QString& page) { return QStringLiteral(":/guide/%1.md").arg(page); }
} // namespace

GuideWindow::GuideWindow(QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_text(new QTextBrowser(this)) {
    setWindowTitle(tr("Reelwright: the guide"));
    resize(760, 720);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_text);
    m_text->setAccessibleName(tr("The guide"));
    m_text->setSearchPaths({QStringLiteral(":/guide")});
    m_text->document()->setDocumentMargin(24);
    // What a page links to is another page; nothing of the guide leads out of the program.
    m_text->setOpenExternalLinks(false);
    setFocusProxy(m_text);
}

void GuideWindow::open(const QString& page) {
    const QString path = QFile::exists(pagePath(page)) ? pagePath(page) : pagePath(QStringLiteral("index"));
    m_text->setSource(QUrl(QStringLiteral("qrc") + path), QTextDocument::MarkdownResource);
    if (isVisible()) {
        raise();
    }
    show();
    activateWindow();
    m_text->setFocus(Qt::OtherFocusReason);
}

void GuideWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
