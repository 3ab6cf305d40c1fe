// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"
#include "ui/documents/job_card.h"

namespace rw::ui {

/// A stock-take on one page: what was found and what it may come from, every lot that was weighed, what was not, and a
/// line to sign on. Lines shrink until they fit; beyond what can be read, lots that the scale found right are counted
/// only. Paints no background.
void paintStockTake(QPainter& painter, const QRectF& area, const desk::StockTakeSheet& sheet,
                    const JobCardStyle& style = {});

} // namespace rw::ui
