// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/customers/customer.h"

#include <QLineEdit>
#include <QWidget>

class QKeyEvent;

namespace rw::ui {

/// Somebody who was never here: a name, and a phone number that helps next time. Enter goes on, then adds.
class NewPersonForm final : public QWidget {
    Q_OBJECT

public:
    explicit NewPersonForm(QWidget* parent = nullptr);

    void start(const Customer& from); ///< puts the keyboard on what is still blank
    void clear();
    [[nodiscard]] Customer customer() const;
    [[nodiscard]] QLineEdit* name() const { return m_name; }
    [[nodiscard]] QLineEdit* phone() const { return m_phone; }

Q_SIGNALS:
    void wanted(const Customer& customer);
    void dropped();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* m_name;
    QLineEdit* m_phone;
};

} // namespace rw::ui
