// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/stock/queue_oracle.h"

#include <glpk.h>

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace rw::stock::test {

namespace {
// In metres, each above all that can stand against it, yet small enough for GLPK's tolerances.
constexpr double kOpened = 25;
constexpr double kLeftOut = 200;
constexpr double kPinnedLeftOut = 1'800;

/// A set of pieces that comes off a lot.
struct Column {
    std::size_t lot;
    unsigned pieces; ///< a bit for each
    double lostMm;
    bool opens;
};

Length usableOf(const CutSource& lot) {
    return lot.length > lot.gap ? lot.length - lot.gap : Length::fromMillimetres(0);
}

bool isPinned(const QueuePiece& piece, const std::vector<QueueLot>& lots) {
    return std::ranges::any_of(
        lots, [&](const QueueLot& each) { return each.pinnedTo == piece.job && each.owner == piece.owner; });
}

bool mayTake(const QueueLot& lot, const QueuePiece& piece, const std::vector<QueueLot>& lots) {
    return lot.owner == piece.owner && (!isPinned(piece, lots) || lot.pinnedTo == piece.job);
}

std::vector<Column> columnsOf(const std::vector<QueueLot>& lots, const std::vector<QueuePiece>& pieces,
                              const RemnantValue& value) {
    std::vector<Column> columns;
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        for (unsigned set = 0; set < 1U << pieces.size(); ++set) {
            Length cut = Length::fromMillimetres(0);
            bool allowed = true;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                if ((set >> i & 1U) != 0) {
                    cut += pieces[i].length;
                    allowed = allowed && mayTake(lots[lot], pieces[i], lots);
                }
            }
            const CutSource& source = lots[lot].source;
            if (allowed && (set == 0 || cut <= usableOf(source))) {
                columns.push_back({lot, set, value.lostByCutting(usableOf(source), cut), set != 0 && source.sealed});
            }
        }
    }
    return columns;
}

using Problem = std::unique_ptr<glp_prob, decltype(&glp_delete_prob)>;

/// A column that stands with a one in each of these rows.
void addColumn(glp_prob* problem, double cost, std::vector<int> rows) {
    const int column = glp_add_cols(problem, 1);
    glp_set_obj_coef(problem, column, cost);
    glp_set_col_kind(problem, column, GLP_BV);
    const int count = static_cast<int>(rows.size());
    rows.insert(rows.begin(), 0); // GLPK counts from 1
    const std::vector<double> ones(rows.size(), 1);
    glp_set_mat_col(problem, column, count, rows.data(), ones.data());
}

/// Rows: the lots, each with one of its sets; then the pieces, each in one set or left out. Columns: the sets, then
/// the pieces left out.
Problem problemOf(const std::vector<Column>& columns, const std::vector<QueueLot>& lots,
                  const std::vector<QueuePiece>& pieces) {
    Problem problem(glp_create_prob(), glp_delete_prob);
    glp_set_obj_dir(problem.get(), GLP_MIN);
    const int lotRows = static_cast<int>(lots.size());
    const int rowCount = lotRows + static_cast<int>(pieces.size());
    glp_add_rows(problem.get(), rowCount);
    for (int row = 1; row <= rowCount; ++row) {
        glp_set_row_bnds(problem.get(), row, GLP_FX, 1, 1);
    }
    const auto rowOfPiece = [&](std::size_t piece) { return lotRows + 1 + static_cast<int>(piece); };
    for (const Column& column : columns) {
        std::vector<int> rows{1 + static_cast<int>(column.lot)};
        for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
            if ((column.pieces >> piece & 1U) != 0) {
                rows.push_back(rowOfPiece(piece));
            }
        }
        addColumn(problem.get(), column.lostMm / 1'000 + (column.opens ? kOpened : 0), rows);
    }
    for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
        addColumn(problem.get(), isPinned(pieces[piece], lots) ? kPinnedLeftOut : kLeftOut, {rowOfPiece(piece)});
    }
    return problem;
}
} // namespace

PlanWorth worthOf(const QueuePlan& plan, const std::vector<QueueLot>& lots, const std::vector<QueuePiece>& pieces,
                  const RemnantValue& value) {
    PlanWorth worth;
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        const CutSource& source = lots[lot].source;
        Length cut = Length::fromMillimetres(0);
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (plan.placing[i] != lot) {
                continue;
            }
            cut += pieces[i].length;
            if (!mayTake(lots[lot], pieces[i], lots)) {
                throw std::logic_error("a piece comes off a lot that is not for it");
            }
        }
        if (cut.isPositive() && cut > usableOf(source)) {
            throw std::logic_error("more is cut off a lot than it holds");
        }
        worth.opened += cut.isPositive() && source.sealed ? 1 : 0;
        worth.lostMm += value.lostByCutting(usableOf(source), cut);
    }
    worth.leftOut = static_cast<int>(std::ranges::count(plan.placing, Placing::value_type{}));
    return worth;
}

PlanWorth bestByGlpk(const std::vector<QueueLot>& lots, const std::vector<QueuePiece>& pieces,
                     const RemnantValue& value) {
    const std::vector<Column> columns = columnsOf(lots, pieces, value);
    const Problem problem = problemOf(columns, lots, pieces);
    glp_iocp settings;
    glp_init_iocp(&settings);
    settings.presolve = GLP_ON;
    settings.msg_lev = GLP_MSG_OFF;
    if (glp_intopt(problem.get(), &settings) != 0 || glp_mip_status(problem.get()) != GLP_OPT) {
        throw std::runtime_error("GLPK found no optimum");
    }
    PlanWorth worth{.leftOut = static_cast<int>(pieces.size())};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (glp_mip_col_val(problem.get(), static_cast<int>(i) + 1) > 0.5) {
            worth.leftOut -= __builtin_popcount(columns[i].pieces);
            worth.opened += columns[i].opens ? 1 : 0;
            worth.lostMm += columns[i].lostMm;
        }
    }
    return worth;
}

} // namespace rw::stock::test
