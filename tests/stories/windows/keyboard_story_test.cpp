// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/windows/at_the_window.h"
#include "ui/bench/bench_station.h"
#include "ui/books/books_page.h"
#include "ui/books/books_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/string_choice.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/shell/guide_window.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/tension_edit.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QImage>
#include <QLineEdit>
#include <QMenuBar>

#include <set>

namespace rw::ui::test {
namespace {

class Keyboard : public AtTheWindow {
protected:
    void petrasRacketA() {
        type("417");
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return m_window->counter()->person().picked().has_value(); }));
        press(Qt::Key_Down); // B was here last
        press(Qt::Key_Return);
        ASSERT_TRUE(becomes([&] { return m_window->counter()->racket().picked().has_value(); }));
    }
    QPoint place(const QWidget* widget) { return widget->mapTo(m_window.get(), QPoint(0, 0)); }
};

TEST_F(Keyboard, TabGoesInReadingOrder) {
    petrasRacketA();
    press(Qt::Key_F5);
    press(Qt::Key_P, Qt::AltModifier); // to the first line
    std::vector<QWidget*> visited;
    std::set<QWidget*> seen;
    for (int i = 0; i < 40 && seen.insert(whereTheKeyboardIs()).second; ++i) {
        visited.push_back(whereTheKeyboardIs());
        press(Qt::Key_Tab);
    }
    ASSERT_GE(visited.size(), 12U);
    EXPECT_EQ(whereTheKeyboardIs(), visited.front()) << "round and back to the first line";
    for (std::size_t i = 1; i < visited.size(); ++i) {
        const QPoint before = place(visited[i - 1]);
        const QPoint after = place(visited[i]);
        const int sameLine = visited[i]->height() / 2;
        const bool further = after.y() > before.y() + sameLine ||
                             (std::abs(after.y() - before.y()) <= sameLine && after.x() > before.x());
        EXPECT_TRUE(further) << visited[i - 1]->accessibleName().toStdString() << " then "
                             << visited[i]->accessibleName().toStdString();
    }
}

TEST_F(Keyboard, EverythingThatTakesTheKeyboardHasAName) {
    const auto named = [](QWidget* page) {
        for (auto* widget : page->findChildren<QWidget*>()) {
            const bool isControl = qobject_cast<QLineEdit*>(widget) != nullptr ||
                                   qobject_cast<QComboBox*>(widget) != nullptr ||
                                   qobject_cast<QAbstractItemView*>(widget) != nullptr ||
                                   qobject_cast<QAbstractSpinBox*>(widget) != nullptr;
            if (qobject_cast<QHeaderView*>(widget) != nullptr) {
                continue; // the shelf has none to see
            }
            // What Qt builds inside a spin box or the popup of a choice speaks for itself.
            const bool inner = qobject_cast<QAbstractSpinBox*>(widget->parentWidget()) != nullptr ||
                               QByteArray(widget->parentWidget()->metaObject()->className()).contains("Private");
            if (isControl && !inner) {
                EXPECT_FALSE(widget->accessibleName().isEmpty())
                    << widget->metaObject()->className() << " in " << page->metaObject()->className();
            }
        }
    };
    named(m_window->counter());
    named(m_window->bench());
    named(m_window->stockroom());
    named(m_window->books());
}

TEST_F(Keyboard, EveryActionStandsInAMenuWithItsKey) {
    std::set<QString> words;
    for (auto* menu : m_window->menuBar()->findChildren<QMenu*>()) {
        for (auto* action : menu->actions()) {
            if (!action->isSeparator()) {
                words.insert(action->text());
            }
        }
    }
    QList<Workplace*> places{m_window->counter(), m_window->bench(), m_window->stockroom(), m_window->books()};
    for (auto* page : m_window->books()->pages()) {
        places << page;
    }
    for (const auto* place : places) {
        for (const auto* action : place->keys()) {
            EXPECT_EQ(words.count(action->text()), 1U) << action->text().toStdString();
            EXPECT_FALSE(action->shortcut().isEmpty()) << action->text().toStdString();
        }
    }
}

TEST_F(Keyboard, TheKeysOfTheBenchAreLettersOnlyWhereNobodyTypes) {
    press(Qt::Key_2, Qt::ControlModifier);
    auto& bench = m_window->bench()->presenter();
    ASSERT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Cut; }));
    press(Qt::Key_C);
    type("p"); // into the length: it puts nothing down
    EXPECT_EQ(static_cast<QLineEdit*>(whereTheKeyboardIs())->text(), QStringLiteral("p"));
    press(Qt::Key_Return);
    EXPECT_EQ(bench.step(), BenchPresenter::Step::Cut);
    EXPECT_EQ(lot("L-3").length, metres(48.7));
    press(Qt::Key_Escape);
    press(Qt::Key_P);
    EXPECT_TRUE(becomes([&] { return bench.step() == BenchPresenter::Step::Take; }));
}

TEST_F(Keyboard, WhatCannotBeReadIsSaidBesideTheLineAndNothingIsLogged) {
    petrasRacketA();
    press(Qt::Key_F5);
    const auto before = jobs(JobState::Logged).size();
    type("abc");
    press(Qt::Key_Return, Qt::ControlModifier);
    auto& sheet = *m_window->counter()->intake();
    EXPECT_TRUE(sheet.tensionNote()->text().startsWith(QStringLiteral("✕ ")));
    EXPECT_TRUE(sheet.mainsTension()->hasFocus());
    EXPECT_EQ(sheet.note()->text(), QStringLiteral("felt a touch stiff")) << "nothing else is lost";
    press(Qt::Key_A, Qt::ControlModifier);
    type("5000 lb");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(sheet.tensionNote()->text().startsWith(QStringLiteral("✕ ")));
    EXPECT_EQ(jobs(JobState::Logged).size(), before);
    press(Qt::Key_A, Qt::ControlModifier);
    type("52");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(saysSoon(QStringLiteral("Logged ")));
}

TEST_F(Keyboard, F1OpensThePageOfTheStation) {
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(becomes([&] { return m_window->bench()->isVisible(); }));
    press(Qt::Key_F1);
    ASSERT_TRUE(becomes([&] { return m_window->guide()->isActiveWindow(); }));
    const auto* page = m_window->guide()->text();
    EXPECT_TRUE(page->toPlainText().startsWith(QStringLiteral("Bench")));
    const auto picture =
        page->document()->resource(QTextDocument::ImageResource, QUrl(QStringLiteral("pictures/bench.png")));
    EXPECT_FALSE(picture.value<QImage>().isNull()) << "its picture comes with the program";
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_window->guide()->isVisible());
}

TEST_F(Keyboard, NamesFromAnywhereAndOfAnyLengthAreTakenOrRefusedInWords) {
    type("\xF0\x9F\x8E\xBE \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D"); // a ball, and right to left
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return whereTheKeyboardIs()->accessibleName() == QStringLiteral("Phone"); }));
    press(Qt::Key_Return);
    ASSERT_TRUE(becomes([&] { return m_window->counter()->person().picked().has_value(); }));
    EXPECT_EQ(m_window->counter()->person().picked()->customer.name,
              "\xF0\x9F\x8E\xBE \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D");
}

} // namespace
} // namespace rw::ui::test
