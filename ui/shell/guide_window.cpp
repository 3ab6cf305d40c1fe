// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/guide_window.h"

#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextTable>
#include <QUrl>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kPictureWidth = 690; ///< what a page of the window has room for

/// The pages, with pictures as wide as a page and no wider.
class Pages final : public QTextBrowser {
public:
    using QTextBrowser::QTextBrowser;

protected:
    QVariant loadResource(int type, const QUrl& name) override {
        const QVariant resource = QTextBrowser::loadResource(type, name);
        if (type != QTextDocument::ImageResource) {
            return resource;
        }
        const auto whole = QImage::fromData(resource.toByteArray());
        QImage picture = whole.scaledToWidth(qRound(kPictureWidth * devicePixelRatioF()), Qt::SmoothTransformation);
        picture.setDevicePixelRatio(devicePixelRatioF());
        return picture;
    }
};

/// Tables as quiet as the rest: room around the words instead of boxes.
void quietTables(const QTextDocument& page) {
    for (auto* frame : page.rootFrame()->childFrames()) {
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            QTextTableFormat format = table->format();
            format.setBorder(0);
            format.setCellPadding(4);
            format.setCellSpacing(0);
            format.setTopMargin(8);
            format.setBottomMargin(8);
            table->setFormat(format);
        }
    }
}

QString pagePath(const QString& page) { return QStringLiteral(":/guide/%1.md").arg(page); }
} // namespace

GuideWindow::GuideWindow(QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_text(new Pages(this)) {
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
    connect(m_text, &QTextBrowser::sourceChanged, this, [this] { quietTables(*m_text->document()); });
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
