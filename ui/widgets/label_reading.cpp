// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/label_reading.h"

#include <QAccessibleWidget>
#include <QLabel>

namespace rw::ui {

namespace {
/// A label as Qt has it read out (its text is its name, and it names its buddy), but for one that bears another name.
class ReadLabel final : public QAccessibleWidget {
public:
    explicit ReadLabel(QLabel* label)
        : QAccessibleWidget(label, QAccessible::StaticText) {}

    [[nodiscard]] QString text(QAccessible::Text what) const override {
        const QString said = QAccessibleWidget::text(what);
        const bool isNamed = !label().accessibleName().isEmpty();
        const bool isTexts = what == QAccessible::Name ? !isNamed : what == QAccessible::Description && isNamed;
        return isTexts && said.isEmpty() ? words() : said;
    }

    [[nodiscard]] QList<std::pair<QAccessibleInterface*, QAccessible::Relation>> relations(
        QAccessible::Relation match) const override {
        auto all = QAccessibleWidget::relations(match);
        if (match.testFlag(QAccessible::Labelled) && label().buddy() != nullptr) {
            all.append({QAccessible::queryAccessibleInterface(label().buddy()), QAccessible::Labelled});
        }
        return all;
    }

private:
    [[nodiscard]] const QLabel& label() const { return *static_cast<const QLabel*>(widget()); }
    [[nodiscard]] QString words() const {
        QString text = label().text();
        return label().buddy() != nullptr ? text.remove(QLatin1Char('&')) : text;
    }
};

QAccessibleInterface* makeReadable(const QString& className, QObject* object) {
    return className == QLatin1String("QLabel") ? new ReadLabel(static_cast<QLabel*>(object)) : nullptr;
}
} // namespace

void letLabelsBeRead() { QAccessible::installFactory(&makeReadable); }

} // namespace rw::ui
