// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/new_person_form.h"

#include "ui/text/format.h"

#include <QHBoxLayout>
#include <QKeyEvent>

namespace rw::ui {

NewPersonForm::NewPersonForm(QWidget* parent)
    : QWidget(parent)
    , m_name(new QLineEdit(this))
    , m_phone(new QLineEdit(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(m_name, 3);
    layout->addWidget(m_phone, 2);
    m_name->setAccessibleName(tr("Name"));
    m_name->setPlaceholderText(tr("name"));
    m_phone->setAccessibleName(tr("Phone"));
    m_phone->setPlaceholderText(tr("phone"));
    setFocusProxy(m_name);
}

void NewPersonForm::start(const Customer& from) {
    m_name->setText(fromUtf8(from.name));
    m_phone->setText(from.contacts.empty() ? QString() : fromUtf8(from.contacts.front().text));
    (m_name->text().isEmpty() ? m_name : m_phone)->setFocus(Qt::OtherFocusReason);
}

void NewPersonForm::clear() {
    m_name->clear();
    m_phone->clear();
}

Customer NewPersonForm::customer() const {
    Customer customer{std::nullopt, m_name->text().trimmed().toStdString(), {}, 0};
    const QString phone = m_phone->text().trimmed();
    if (!phone.isEmpty()) {
        customer.contacts.push_back({Contact::Kind::Phone, phone.toStdString()});
    }
    return customer;
}

void NewPersonForm::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_name->hasFocus() && m_phone->text().isEmpty() && !m_name->text().trimmed().isEmpty()) {
            m_phone->setFocus(Qt::TabFocusReason);
        } else {
            Q_EMIT wanted(customer());
        }
        return;
    case Qt::Key_Escape:
        Q_EMIT dropped();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
