// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/open_matters_presenter.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QWidget>

#include <optional>

namespace rw::ui {

class MoneyEdit;

/// What is paid for a job now, and how; or given back, where more is paid than the job costs. More than is owed is said
/// beside it first, and taken by the next Enter.
class PaySheet final : public QWidget {
    Q_OBJECT

public:
    explicit PaySheet(QWidget* parent = nullptr);

    void start(const desk::OpenMatter& matter);
    [[nodiscard]] bool givesBack() const { return m_matter && m_matter->owed().minor() < 0; }
    /// Nothing while it cannot be read, with the keyboard on it, or while a surplus was not read yet.
    std::optional<OpenMattersPresenter::Payment> payment();
    void showRefusal(const Refusal& why);

    [[nodiscard]] MoneyEdit* amount() const { return m_amount; }
    [[nodiscard]] QString margin() const;

private:
    void showLeft();

    std::optional<desk::OpenMatter> m_matter;
    std::string m_requestKey;
    bool m_surplusShown = false;
    Sheet* m_sheet;
    MoneyEdit* m_amount;
    QComboBox* m_way;
    Sheet::Line m_line{};
};

} // namespace rw::ui
