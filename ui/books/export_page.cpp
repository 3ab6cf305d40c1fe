// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/export_page.h"

#include "ui/books/page_heading.h"
#include "ui/presenter/export_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/text/books_words.h"

#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr std::chrono::seconds kPatience{1};
} // namespace

ExportPage::ExportPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside, QWidget* parent)
    : BooksPage(parent)
    , m_folders(outside.folders)
    , m_owner(owner)
    , m_presenter(std::make_unique<ExportPresenter>(runner, shift, outside.tables, kPatience))
    , m_words(pageWords(this))
    , m_choose(new QPushButton(tr("Choose a folder"), this))
    , m_progress(new QProgressBar(this))
    , m_outcome(pageWords(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(pageHeading(name(), this));
    layout->addWidget(m_words);
    layout->addWidget(m_choose, 0, Qt::AlignLeft);
    layout->addWidget(m_progress);
    layout->addWidget(m_outcome);
    layout->addStretch(1);
    m_choose->setDefault(true);
    m_progress->setAccessibleName(tr("How far it is"));
    m_progress->setFormat(tr("%v of %m files"));
    m_beginKey = addKey(tr("&Choose a folder and write"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)},
                        [this] { begin(); });

    connect(m_choose, &QPushButton::clicked, this, &ExportPage::begin);
    connect(&owner, &OwnerPresenter::changed, this, &ExportPage::showState);
    auto* presenter = m_presenter.get();
    connect(presenter, &ExportPresenter::progressed, this, &ExportPage::showState);
    connect(presenter, &ExportPresenter::written, this, [this](const ExportPresenter::Written& what) {
        m_outcome->setText(QStringLiteral("✓ ") + exportedText(what.files, what.rows, what.folder));
        Q_EMIT said(exportedText(what.files, what.rows, what.folder));
    });
    connect(presenter, &ExportPresenter::stopped, this,
            [this] { m_outcome->setText(tr("Stopped. Nothing was written.")); });
    connect(presenter, &ExportPresenter::refused, this,
            [this](const QString& sentence) { m_outcome->setText(QStringLiteral("✕ ") + sentence); });
    showState();
}

ExportPage::~ExportPage() = default;

void ExportPage::enter() {
    if (m_choose->isEnabled()) {
        m_choose->setFocus(Qt::OtherFocusReason);
    } else {
        setFocus(Qt::OtherFocusReason);
    }
}

void ExportPage::refresh() { m_owner.refresh(); }

bool ExportPage::back() {
    const bool underWay = m_presenter->isUnderWay();
    m_presenter->stop();
    return underWay;
}

void ExportPage::begin() {
    if (m_presenter->isUnderWay()) {
        return;
    }
    const QString folder = m_folders.chooseFolder(tr("Where the files go"));
    if (!folder.isEmpty()) {
        m_outcome->clear();
        m_presenter->begin(folder, m_owner.mayShow());
    }
}

void ExportPage::showState() {
    const bool underWay = m_presenter->isUnderWay();
    const bool keyboardHere = m_choose->hasFocus() || hasFocus();
    m_words->setText(exportWords(m_owner.mayShow()));
    m_choose->setEnabled(!underWay);
    m_beginKey->setEnabled(!underWay);
    m_progress->setVisible(m_presenter->isSlow());
    m_progress->setMaximum(m_presenter->filesInAll());
    m_progress->setValue(m_presenter->filesDone());
    if (m_presenter->isSlow()) {
        m_outcome->setText(tr("Esc stops it."));
    }
    if (keyboardHere) {
        enter();
    }
    Q_EMIT keysChanged();
}

} // namespace rw::ui
