// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QPushButton>
#include <QWidget>

#include <optional>

namespace rw::ui {

class AskedForNonePresenter;

/// Which string somebody asked for that the shop had none of. Enter writes it down, Esc leaves.
class NoneSheet final : public QWidget {
    Q_OBJECT

public:
    explicit NoneSheet(AskedForNonePresenter& asked, QWidget* parent = nullptr);

    /// Comes into view with `string` chosen, where that is known.
    void enter(const std::optional<StringArticleId>& string);
    void takeKeyboard();
    [[nodiscard]] QComboBox* string() const { return m_string; }
    [[nodiscard]] const Sheet::Line& line() const { return m_line; }

Q_SIGNALS:
    void left(); ///< done, or Esc

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] std::optional<StringArticleId> chosen() const;
    void fill();
    void showLeft();
    void writeDown();

    AskedForNonePresenter& m_asked;
    Sheet* m_sheet;
    QComboBox* m_string;
    QPushButton* m_writeDown;
    Sheet::Line m_line{};
    std::optional<StringArticleId> m_wanted; ///< to be chosen once the strings are known
};

} // namespace rw::ui
