// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/order_draft.h"

#include "core/stock/order_point.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace rw::stock {

namespace {
using Because = DraftLine::Because;

constexpr double kSoonDays = 14;
constexpr double kDaysOfAYear = 365;

class Draft {
public:
    Draft(std::span<const StringPosition> strings, const SupplierTerms& terms)
        : m_strings(strings)
        , m_terms(terms)
        , m_reels(strings.size(), 0) {}

    std::vector<DraftLine> lines() {
        add(Because::RunningShort, 0);
        if (m_lines.empty()) {
            return {};
        }
        add(Because::DueSoon, kSoonDays);
        fillFreeShipping();
        return m_lines;
    }

private:
    /// Those that run short within so many days.
    void add(Because because, double days) {
        for (std::size_t i = 0; i < m_strings.size(); ++i) {
            const StringPosition& string = m_strings[i];
            if (m_reels[i] == 0 && isRunningShort(string.positionJobs - days * string.jobsPerDay, string.s)) {
                m_reels[i] = string.reelsPerOrder;
                m_lines.push_back({string.article, string.reelsPerOrder, because});
            }
        }
    }

    /// When one more reel of a string would be needed, in days.
    [[nodiscard]] double dueDays(std::size_t i) const {
        const StringPosition& string = m_strings[i];
        const double jobs = string.positionJobs + m_reels[i] * string.jobsPerReel - string.s;
        return string.jobsPerDay > 0 ? std::max(0.0, jobs / string.jobsPerDay)
                                     : std::numeric_limits<double>::infinity();
    }

    [[nodiscard]] std::int64_t goodsMinor() const {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < m_strings.size(); ++i) {
            sum += m_strings[i].reelPrice.minor() * m_reels[i];
        }
        return sum;
    }

    void fillFreeShipping() {
        if (!m_terms.freeFrom) {
            return;
        }
        const std::vector<int> reelsBefore = m_reels;
        std::vector<DraftLine> early;
        auto worthMinor = static_cast<double>(m_terms.shipping.minor());
        while (goodsMinor() < m_terms.freeFrom->minor()) {
            std::size_t soonest = 0;
            for (std::size_t i = 1; i < m_strings.size(); ++i) {
                soonest = dueDays(i) < dueDays(soonest) ? i : soonest;
            }
            const StringPosition& string = m_strings[soonest];
            const double days = dueDays(soonest);
            worthMinor -= static_cast<double>(string.reelPrice.minor()) * m_terms.holdingRate * days / kDaysOfAYear;
            if (!(worthMinor > 0)) {
                m_reels = reelsBefore;
                return;
            }
            ++m_reels[soonest];
            const auto line = std::ranges::find(early, string.article, &DraftLine::article);
            if (line == early.end()) {
                early.push_back({string.article, 1, Because::FillsFreeShipping, days});
            } else {
                ++line->reels;
            }
        }
        m_lines.insert(m_lines.end(), early.begin(), early.end());
    }

    std::span<const StringPosition> m_strings;
    const SupplierTerms& m_terms;
    std::vector<int> m_reels; ///< of each string in the draft
    std::vector<DraftLine> m_lines;
};
} // namespace

std::vector<DraftLine> draftOrder(std::span<const StringPosition> strings, const SupplierTerms& terms) {
    return Draft(strings, terms).lines();
}

} // namespace rw::stock
