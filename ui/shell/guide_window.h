// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextBrowser>
#include <QWidget>

namespace rw::ui {

/// The guide, page by page. Alt+Left goes back, Esc closes it.
class GuideWindow final : public QWidget {
    Q_OBJECT

public:
    explicit GuideWindow(QWidget* parent = nullptr);

    void open(const QString& page); ///< "counter"; an unknown page is the first one
    [[nodiscard]] QTextBrowser* text() const { return m_text; }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QTextBrowser* m_text;
};

} // namespace rw::ui
