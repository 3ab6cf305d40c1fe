// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/finder.h"

#include "ui/widgets/row_delegate.h"

#include <QAbstractItemModel>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kMostRows = 7;
constexpr int kNarrowest = 420;
} // namespace

Finder::Finder(QAbstractItemModel* results, QWidget* parent)
    : QWidget(parent)
    , m_line(new QLineEdit(this))
    , m_list(new QListView(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_line);
    setFocusProxy(m_line);

    m_list->setModel(results);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFrameShape(QFrame::Box);
    m_list->hide();

    m_line->installEventFilter(this);
    connect(m_line, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_searching = true;
        m_pickWhenReady = false;
        Q_EMIT typed(text);
    });
    connect(results, &QAbstractItemModel::modelReset, this, [this] {
        if (m_line->hasFocus() && (m_searching || (m_opensWhenEntered && !hasPicked()))) {
            showResults();
        } else {
            hideResults();
        }
    });
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& index) {
        hideResults();
        Q_EMIT picked(index.row());
    });
}

void Finder::setNames(const QString& name, const QString& placeholder) {
    m_line->setAccessibleName(name);
    m_line->setPlaceholderText(placeholder);
    m_list->setAccessibleName(tr("%1: what was found").arg(name));
    setAccessibleName(name);
}

void Finder::setReady(bool ready) {
    m_ready = ready;
    if (m_ready && m_pickWhenReady) {
        m_pickWhenReady = false;
        if (m_list->model()->rowCount() > 0) {
            pickHighlighted();
        }
    }
}

void Finder::setPicked(const QString& text) {
    m_picked = text;
    m_searching = false;
    m_pickWhenReady = false;
    m_line->setText(text);
    m_line->setCursorPosition(0);
    hideResults();
    if (text.isEmpty() && m_opensWhenEntered && m_line->hasFocus()) {
        showResults();
    }
}

bool Finder::isOpen() const { return m_list->isVisible(); }

void Finder::showResults() {
    auto* model = m_list->model();
    if (model->rowCount() == 0) {
        hideResults();
        return;
    }
    if (m_list->parentWidget() != window()) {
        m_list->setParent(window());
    }
    place();
    m_list->show();
    m_list->raise();
    m_list->setCurrentIndex(model->index(0, 0));
}

void Finder::place() {
    const int rowHeight = std::max(1, m_list->sizeHintForRow(0));
    const int rows = std::min(kMostRows, m_list->model()->rowCount());
    const QPoint below = m_line->mapTo(window(), QPoint(0, m_line->height()));
    const int width = std::min(std::max(m_line->width(), kNarrowest), window()->width() - below.x() - 4);
    const int room = window()->height() - below.y() - 4;
    m_list->setGeometry(below.x(), below.y(), width, std::min(rowHeight * rows + 2 * m_list->frameWidth(), room));
}

void Finder::hideResults() { m_list->hide(); }

std::optional<int> Finder::highlighted() const {
    return isOpen() && m_ready ? std::optional(std::max(0, m_list->currentIndex().row())) : std::nullopt;
}

void Finder::pickHighlighted() {
    const bool isScanned = !m_scan.scanned().isEmpty() && m_scan.scanned() == m_line->text();
    const int row = isScanned && m_scannedRow ? *m_scannedRow : std::max(0, m_list->currentIndex().row());
    hideResults();
    Q_EMIT picked(row);
}

bool Finder::handleKey(int key) {
    const int rows = m_list->model()->rowCount();
    switch (key) {
    case Qt::Key_Down:
    case Qt::Key_Up:
        if (!isOpen()) {
            showResults();
        } else {
            const int row = m_list->currentIndex().row() + (key == Qt::Key_Down ? 1 : -1);
            m_list->setCurrentIndex(m_list->model()->index(std::clamp(row, 0, rows - 1), 0));
        }
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_searching && !m_ready) {
            m_pickWhenReady = true;
            Q_EMIT hurried();
            return true;
        }
        if (isOpen()) {
            pickHighlighted();
            return true;
        }
        return false;
    case Qt::Key_Tab:
        if (isOpen() && m_searching && m_ready) {
            pickHighlighted();
            return true;
        }
        return false;
    case Qt::Key_Escape:
        if (isOpen() || m_searching) {
            setPicked(m_picked);
            hideResults();
            return true;
        }
        return false;
    default:
        return false;
    }
}

bool Finder::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_line) {
        return QWidget::eventFilter(watched, event);
    }
    switch (event->type()) {
    case QEvent::ShortcutOverride: {
        // While something is looked for, Enter and Esc are this line's and no shortcut of the station around it.
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
        if ((enter && (isOpen() || (m_searching && !m_ready))) ||
            (key == Qt::Key_Escape && (isOpen() || m_searching))) {
            event->accept();
            return true;
        }
        break;
    }
    case QEvent::KeyPress: {
        const auto* key = static_cast<QKeyEvent*>(event);
        m_scan.see(*key);
        const bool plain = (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
        if (plain && handleKey(key->key())) {
            return true;
        }
        break;
    }
    case QEvent::FocusIn:
        if (hasPicked()) {
            m_line->selectAll();
        }
        if (m_opensWhenEntered && !hasPicked()) {
            showResults();
        }
        break;
    case QEvent::FocusOut:
        m_pickWhenReady = false;
        hideResults();
        break;
    default:
        break;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace rw::ui
