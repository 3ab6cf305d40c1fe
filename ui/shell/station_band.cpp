// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/station_band.h"

#include "ui/presenter/shift.h"
#include "ui/text/format.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/look.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>

namespace rw::ui {

StationBand::StationBand(Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_shop(new QLabel(this))
    , m_staff(new Choice(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 4, 16, 4);
    layout->setSpacing(4);
    layout->addStretch(1);
    layout->addWidget(m_shop);
    layout->addSpacing(18);
    auto* who = new QLabel(tr("working:"), this);
    layout->addWidget(who);
    layout->addWidget(m_staff);
    m_staff->setMinimumContentsLength(14);
    m_staff->setAccessibleName(tr("Who is working"));
    m_staff->setPlaceholderText(tr("Who is working?"));
    // The stations and the person are reached by their keys; Tab belongs to the sheet.
    m_staff->setFocusPolicy(Qt::ClickFocus);
    connect(m_staff, &QComboBox::currentIndexChanged, this, [this] {
        if (const qint64 id = m_staff->currentData().toLongLong(); id != 0) {
            m_shift.setStaff(StaffId::of(id));
        }
    });
    connect(m_staff, &QComboBox::activated, this, &StationBand::giveKeyboardBack);
    connect(&m_shift, &Shift::shopChanged, this, &StationBand::showShop);
    connect(&m_shift, &Shift::staffChanged, this, &StationBand::showShop);
    showShop();
}

void StationBand::addStation(const QString& name, const QString& key) {
    auto* button = new QPushButton(name, this);
    button->setFlat(true);
    button->setFocusPolicy(Qt::NoFocus);
    button->setFont(largeFont(*this, 1.35));
    button->setToolTip(key);
    button->setAccessibleName(name);
    button->setAccessibleDescription(key);
    button->setCursor(Qt::PointingHandCursor);
    button->setStyleSheet(QStringLiteral("border: 0; background: transparent; padding: 6px 14px;"));
    const int station = static_cast<int>(m_names.size());
    static_cast<QHBoxLayout*>(layout())->insertWidget(station, button);
    connect(button, &QPushButton::clicked, this, [this, station] { Q_EMIT chosen(station); });
    m_names << button;
}

void StationBand::setCurrent(int station) {
    m_current = station;
    for (int i = 0; i < m_names.size(); ++i) {
        QFont font = m_names[i]->font();
        font.setBold(i == station);
        m_names[i]->setFont(font);
    }
    update();
}

void StationBand::showShop() {
    const QSignalBlocker quiet(m_staff);
    m_staff->clear();
    if (m_shift.hasShop()) {
        m_shop->setText(fromUtf8(m_shift.shop().name));
        for (const auto& member : m_shift.shop().staff) {
            m_staff->addItem(fromUtf8(member.name), qint64{member.id->value()});
        }
    }
    m_staff->setCurrentIndex(m_shift.staff() ? m_staff->findData(qint64{m_shift.staff()->value()}) : -1);
    setVisible(m_shift.hasShop() && !m_shift.shop().isNew());
}

void StationBand::askWho() {
    if (!m_staff->hasFocus()) {
        m_before = QApplication::focusWidget();
    }
    m_staff->setFocus(Qt::ShortcutFocusReason);
    m_staff->showPopup();
}

void StationBand::giveKeyboardBack() {
    if (m_before && m_before->isVisible()) {
        m_before->setFocus(Qt::OtherFocusReason);
    } else {
        Q_EMIT left();
    }
    m_before.clear();
}

void StationBand::keyPressEvent(QKeyEvent* event) {
    // The list was closed without a choice, or somebody changed their mind.
    if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        giveKeyboardBack();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void StationBand::paintEvent(QPaintEvent*) {
    const Palette palette = programPalette();
    QPainter painter(this);
    painter.fillRect(rect(), palette.shade);
    painter.setPen(palette.rule);
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
    if (m_current >= 0 && m_current < m_names.size()) {
        // The station that is in view has a bold name and a bar below it.
        const QRect name = m_names[m_current]->geometry();
        painter.fillRect(QRect(name.left() + 12, height() - 5, name.width() - 24, 5), palette.accent);
    }
}

} // namespace rw::ui
