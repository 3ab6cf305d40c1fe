// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_page.h"
#include "ui/model/words_model.h"
#include "ui/text/sentences.h"

#include <QLabel>
#include <QListView>
#include <QStackedWidget>

#include <vector>

class QVBoxLayout;

namespace rw::ui {

/// What the pages share on which the owner sets the shop up: a list, and below it the sheet in which one row is changed
/// or a new one added. Enter opens it and keeps what was written, Esc closes it.
class SetUpPage : public BooksPage {
    Q_OBJECT

public:
    void enter() override;
    bool back() override;

    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] const WordsModel& rows() const { return m_rows; }
    [[nodiscard]] QWidget* sheet() const; ///< the one that is open; null

protected:
    /// `listName`: of the list, for who does not see it.
    SetUpPage(const QString& heading, const QString& listName, QWidget* parent);

    void addSheet(QWidget* sheet);
    /// A tall one takes the place of the list while it is open.
    void addTallSheet(QWidget* sheet);
    void openSheet(QWidget* sheet);
    void closeSheet();
    /// Says why something was refused: in the one of these sheets that is open, else as a message.
    template<class... Sheets>
    void tellRefusal(const Refusal& why, Sheets*... sheets) {
        const auto inSheet = [&](auto* candidate) {
            if (sheet() != candidate) {
                return false;
            }
            candidate->showRefusal(why);
            return true;
        };
        if (!(inSheet(sheets) || ...)) {
            Q_EMIT said(sentenceFor(why));
        }
    }
    /// Something between the heading and the list.
    void addAboveList(QWidget* widget);

    /// Shows rows, and the words instead of or above them. The row under the keyboard stays where it was unless `row`
    /// says otherwise.
    void showRows(std::vector<WordsRow> rows, const QString& words, int row = -1);
    void setHeading(const QString& words);
    [[nodiscard]] int currentRow() const; ///< -1 when there is none
    void setCurrentRow(int row);

    /// Which keys do something now. Called whenever that may have changed.
    virtual void enableKeys() = 0;
    [[nodiscard]] bool hasKeyboard() const; ///< the keyboard is somewhere on the page
    /// Where the keyboard goes when no sheet is open.
    virtual QWidget* whereWorkBegins();

    /// For addKey() and addCommand(): Enter on the list, Enter in the sheet.
    static QList<QKeySequence> enterKeys();

private:
    QLabel* m_heading;
    QLabel* m_words;
    QVBoxLayout* m_above;
    QListView* m_list;
    QStackedWidget* m_sheets;
    QList<QWidget*> m_tall;
    WordsModel m_rows;
};

} // namespace rw::ui
