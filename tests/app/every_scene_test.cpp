// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/picture_scenes.h"
#include "app/files/csv_files.h"
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"
#include "tests/ui/support/chosen_folder.h"
#include "tests/ui/support/known_warnings.h"
#include "tests/ui/support/paper_tray.h"
#include "ui/presenter/shift.h"
#include "ui/qtport/direct_desk_runner.h"
#include "ui/shell/main_window.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QStackedWidget>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace rw::desktop {

void PrintTo(const Scene& scene, std::ostream* out) { *out << scene.name.toStdString(); }

namespace {

constexpr Instant kThursday = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

std::unique_ptr<desk::Ledger> openAt(const QString& file) {
    return std::move(*sql::openLedger(*sql::LedgerAddress::parse(file.toStdString())));
}

/// The demo shop, stocked once for all scenes.
QString stockedFile() {
    static const QTemporaryDir folder;
    static const QString file = [] {
        const QString made = folder.filePath(QStringLiteral("stocked.sqlite"));
        const auto stocked =
            desk::inTransaction(*openAt(made), desk::Access::Write, [](desk::Transaction& transaction) {
                return desk::stockDemoShop(transaction, kThursday);
            });
        EXPECT_TRUE(stocked.has_value());
        return made;
    }();
    return file;
}

/// Each state of the windows that pictures are drawn of, at the smallest size the program is made for.
class EveryScene : public testing::TestWithParam<Scene> {
protected:
    void SetUp() override {
        const QString file = m_folder.filePath(QStringLiteral("shop.sqlite"));
        if (GetParam().stocked) {
            ASSERT_TRUE(QFile::copy(stockedFile(), file));
        }
        m_ledger = openAt(file);
        if (GetParam().before) {
            ASSERT_TRUE(desk::inTransaction(*m_ledger, desk::Access::Write, GetParam().before).has_value());
        }
        m_runner = std::make_unique<ui::DirectDeskRunner>(*m_ledger);
        m_window = std::make_unique<ui::MainWindow>(*m_runner, m_shift, ui::Outside{m_folders, m_files, m_tray},
                                                    std::chrono::milliseconds(0));
        m_window->resize(1280, 800);
        m_window->show();
        m_window->activateWindow();
        QApplication::processEvents();
        if (GetParam().stocked) {
            m_shift.setStaff(*m_shift.shop().staff.front().id);
        }
        m_shown = GetParam().play(*m_window);
        QApplication::processEvents();
        m_shown->resize(1280, 800);
        QApplication::processEvents();
    }

    [[nodiscard]] QRect placeOf(const QWidget& widget) const {
        return {widget.mapTo(m_window.get(), QPoint(0, 0)), widget.size()};
    }
    [[nodiscard]] static std::string nameOf(const QWidget& widget) {
        const QString name = widget.accessibleName().isEmpty() ? widget.objectName() : widget.accessibleName();
        return (QString::fromLatin1(widget.metaObject()->className()) + QStringLiteral(" “") + name +
                QStringLiteral("”"))
            .toStdString();
    }
    /// What Tab stops at in the part of the window that changes, from the first on.
    [[nodiscard]] std::vector<QWidget*> tabStops() const {
        auto* pages = m_window->findChild<QStackedWidget*>();
        std::vector<QWidget*> stops;
        std::set<const QWidget*> seen;
        for (auto* widget = m_window->nextInFocusChain(); widget != m_window.get() && seen.insert(widget).second;
             widget = widget->nextInFocusChain()) {
            if (pages->isAncestorOf(widget) && widget->isVisible() && widget->isEnabled() &&
                (widget->focusPolicy() & Qt::TabFocus) != 0 && widget->focusProxy() == nullptr) {
                stops.push_back(widget);
            }
        }
        return stops;
    }

    void expectThatTabFollowsTheReading();
    void expectThatWhateverTakesTheKeyboardHasAName();
    void expectThatNoWordsAreCutOff();
    void expectThatAKeyMeansOneThing();

    ui::test::OnlyKnownWarnings m_warnings;
    QTemporaryDir m_folder;
    FixedClock m_clock{kThursday};
    std::unique_ptr<desk::Ledger> m_ledger;
    std::unique_ptr<ui::DirectDeskRunner> m_runner;
    ui::Shift m_shift{m_clock};
    ui::test::ChosenFolder m_folders;
    app::CsvFiles m_files;
    ui::test::PaperTray m_tray;
    std::unique_ptr<ui::MainWindow> m_window;
    QWidget* m_shown = nullptr;
};

/// Reading goes along a line, then down; a column to the right may be read after the one before it.
bool isReadAfter(const QRect& next, const QRect& before) {
    const bool sameLine = next.top() < before.bottom() && before.top() < next.bottom();
    return sameLine ? next.left() > before.left() : next.top() > before.top() || next.left() >= before.right();
}

void EveryScene::expectThatTabFollowsTheReading() {
    const auto stops = tabStops();
    for (std::size_t i = 1; i < stops.size(); ++i) {
        EXPECT_TRUE(isReadAfter(placeOf(*stops[i]), placeOf(*stops[i - 1])))
            << "after " << nameOf(*stops[i - 1]) << " comes " << nameOf(*stops[i]);
    }
}

void EveryScene::expectThatWhateverTakesTheKeyboardHasAName() {
    for (const QWidget* widget : tabStops()) {
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_TRUE(!widget->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty()))
            << nameOf(*widget) << " in " << nameOf(*widget->parentWidget());
    }
}

void EveryScene::expectThatNoWordsAreCutOff() {
    for (const QLabel* label : m_shown->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) {
            continue;
        }
        const QSize room = label->size();
        if (label->wordWrap()) {
            EXPECT_LE(label->heightForWidth(room.width()), room.height()) << label->text().toStdString();
        } else {
            EXPECT_LE(label->sizeHint().width(), room.width()) << label->text().toStdString();
        }
    }
    for (const QAbstractButton* button : m_shown->findChildren<QAbstractButton*>()) {
        if (button->isVisible() && !button->text().isEmpty()) {
            EXPECT_LE(button->minimumSizeHint().width(), button->width()) << button->text().toStdString();
        }
    }
}

// Of two that share a key neither is done: Qt calls it ambiguous.
void EveryScene::expectThatAKeyMeansOneThing() {
    std::map<std::pair<const QObject*, QString>, QString> meanings;
    for (const QAction* action : m_window->findChildren<QAction*>()) {
        const auto* workplace = qobject_cast<const QWidget*>(action->parent());
        if (workplace == nullptr || !workplace->isVisible() || !action->isEnabled()) {
            continue;
        }
        for (const QKeySequence& key : action->shortcuts()) {
            const auto [other, isFirst] = meanings.try_emplace({workplace, key.toString()}, action->text());
            EXPECT_TRUE(isFirst) << key.toString().toStdString() << " is " << other->second.toStdString() << " and "
                                 << action->text().toStdString();
        }
    }
}

// One test, since putting the window together takes longer than looking at it.
TEST_P(EveryScene, CanBeReadAndWorkedByKeyboard) {
    expectThatTabFollowsTheReading();
    expectThatWhateverTakesTheKeyboardHasAName();
    expectThatNoWordsAreCutOff();
    expectThatAKeyMeansOneThing();
}

std::string asIdentifier(const testing::TestParamInfo<Scene>& info) {
    std::string name = info.param.name.toStdString();
    std::ranges::replace(name, '-', '_');
    return name;
}
INSTANTIATE_TEST_SUITE_P(Pictures, EveryScene, testing::ValuesIn(scenes()), asIdentifier);

} // namespace
} // namespace rw::desktop
