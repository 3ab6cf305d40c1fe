// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/known_warnings.h"
#include "ui/model/list_model.h"
#include "ui/widgets/row_delegate.h"

#include <QListView>
#include <QStandardItemModel>

namespace rw::ui::test {
namespace {

class RowDelegateTest : public testing::Test {
protected:
    RowDelegateTest() {
        list.setModel(&rows);
        list.setItemDelegate(new RowDelegate(&list));
        list.setWordWrap(true);
        list.resize(360, 300);
        list.show();
    }
    int heightOf(const QString& detail) {
        auto* row = new QStandardItem(QStringLiteral("2122 · Aldermoor 98 A"));
        row->setData(detail, DetailRole);
        rows.clear();
        rows.appendRow(row);
        return list.sizeHintForRow(0);
    }
    OnlyKnownWarnings warnings;
    QStandardItemModel rows;
    QListView list;
};

TEST_F(RowDelegateTest, WhatASecondLineHasNoRoomForStandsOnAThird) {
    const int two = heightOf(QStringLiteral("Ivo Castelmere · L"));
    const QString longer = QStringLiteral("◐ on the machine · Bram Hollickstone · K / L · 24.5/23.5 kg");
    EXPECT_GT(heightOf(longer), two);
    list.setWordWrap(false);
    EXPECT_EQ(heightOf(longer), two);
    list.setWordWrap(true);
    list.resize(900, 300);
    EXPECT_EQ(heightOf(longer), two);
}

} // namespace
} // namespace rw::ui::test
