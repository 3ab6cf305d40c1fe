// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/typed_tag.h"

#include <QListView>

namespace rw::ui {

/// What is next at the bench. Its letters are the bench's keys: one that means nothing now must not jump to another
/// racket. Digits and Enter are a tag's number, from a scanner or by hand.
class QueueView final : public QListView {
    Q_OBJECT

public:
    using QListView::QListView;

    [[nodiscard]] const QString& typedTag() const { return m_tag.digits(); }
    void keyboardSearch(const QString&) override {}

Q_SIGNALS:
    void tagTyped(); ///< a digit more or less
    void tagEntered(std::int64_t number);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    TypedTag m_tag;
};

} // namespace rw::ui
