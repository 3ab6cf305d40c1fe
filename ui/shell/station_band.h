// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

class QLabel;

namespace rw::ui {

class Shift;

/// The edge of the window: the stations by name, the shop, and who is working.
class StationBand final : public QWidget {
    Q_OBJECT

public:
    explicit StationBand(Shift& shift, QWidget* parent = nullptr);

    void addStation(const QString& name, const QString& key);
    void setCurrent(int station); ///< -1: none of them
    [[nodiscard]] QComboBox* staff() const { return m_staff; }
    /// Asks who is working; then the keyboard goes back to where it was.
    void askWho();

Q_SIGNALS:
    void chosen(int station);
    void left(); ///< somebody is chosen, and the keyboard was nowhere else before

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void showShop();
    void giveKeyboardBack();

    Shift& m_shift;
    QList<QPushButton*> m_names;
    int m_current = -1;
    QLabel* m_shop;
    QComboBox* m_staff;
    QPointer<QWidget> m_before; ///< where the keyboard was when it was asked
};

} // namespace rw::ui
