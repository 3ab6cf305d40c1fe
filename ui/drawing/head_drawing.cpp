// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/head_drawing.h"

#include "ui/drawing/dots.h"
#include "ui/drawing/head_geometry.h"
#include "ui/drawing/paper_text.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPathStroker>

#include <algorithm>
#include <cmath>

namespace rw::ui {

namespace {
struct HeadWords {
    Q_DECLARE_TR_FUNCTIONS(HeadWords)
};

// Room around the hoop, mm of the frame: for loops, flags and their words.
constexpr double kBareMargin = 16;
constexpr double kSideMargin = 66;
constexpr double kEndMargin = 38;
constexpr double kKeyHeight = 30;
// How far the crosses' numbers stand from the inner edge: outside the loops.
constexpr double kNumbersOut = 19;
constexpr double kPole = 28;

class HeadPainter {
public:
    HeadPainter(QPainter& painter, const length::CutPlan& plan, const HeadDrawing& how, const QRectF& area)
        : m_painter(painter)
        , m_plan(plan)
        , m_how(how)
        , m_head(plan) {
        const QRectF hoop = m_head.edge(m_head.wall()).boundingRect();
        const bool bare = how.detail == HeadDetail::Thumbnail;
        const double side = bare ? kBareMargin : kSideMargin;
        const double end = bare ? kBareMargin : kEndMargin;
        const double key = how.detail == HeadDetail::Page ? kKeyHeight : 0;
        const QRectF scene = hoop.adjusted(-side, -end, side, end + key);
        const double scale = std::min(area.width() / scene.width(), area.height() / scene.height());
        painter.translate(area.center());
        painter.scale(scale, scale);
        painter.translate(-scene.center());
        m_scene = scene;
        m_dots = dotsPerUnit(painter);
    }

    void draw() {
        m_painter.setRenderHint(QPainter::Antialiasing);
        for (const HeadGeometry::Link& link : m_head.links()) {
            strokeLink(link.path, styleOf(link.piece, link.arm));
        }
        for (const HeadGeometry::Lying& lying : m_head.strings()) {
            drawString(lying);
        }
        drawHoop();
        if (m_how.detail != HeadDetail::Thumbnail) {
            drawDirections();
            drawNumbers();
            drawOrientation();
        }
        drawMarks();
        if (m_how.detail == HeadDetail::Page) {
            drawKey();
        }
    }

private:
    struct LineStyle {
        bool hollow;
        QColor color;
    };

    [[nodiscard]] bool isShortSide(std::size_t piece, std::size_t arm) const {
        return m_plan.pieces[piece].role == PieceRole::Whole && arm == 0;
    }

    [[nodiscard]] LineStyle styleOf(std::size_t piece, std::size_t arm) const {
        if (isShortSide(piece, arm)) {
            return {true, m_how.palette.accent};
        }
        return {piece > 0, m_how.palette.ink};
    }

    /// Millimetres of the frame for a thickness that must be at least so many dots of a screen.
    [[nodiscard]] double thick(double mm, double dots) const { return std::max(mm, dots / m_dots); }
    [[nodiscard]] double solidWidth() const { return thick(1.7, 0.9); }
    [[nodiscard]] double hollowWidth() const { return thick(2.9, 2.2); }
    [[nodiscard]] double hollowPen() const { return thick(0.65, 0.6); }
    [[nodiscard]] bool isWoven() const { return m_how.detail != HeadDetail::Thumbnail && m_dots > 0.45; }

    void setPen(const QColor& color, double width, Qt::PenCapStyle cap = Qt::RoundCap) {
        m_painter.setPen(QPen(color, width, Qt::SolidLine, cap, Qt::RoundJoin));
        m_painter.setBrush(Qt::NoBrush);
    }

    /// A run outside the hoop: lighter than the bed, so that the bed is what is seen first.
    void strokeLink(const QPainterPath& path, const LineStyle& style) {
        if (!style.hollow || !isWoven()) {
            setPen(style.color, style.hollow ? thick(0.7, 0.6) : thick(1.2, 0.7));
            m_painter.drawPath(path);
            return;
        }
        QPainterPathStroker stroker;
        stroker.setWidth(hollowWidth() - 2 * hollowPen());
        stroker.setCapStyle(Qt::FlatCap);
        stroker.setJoinStyle(Qt::RoundJoin);
        setPen(style.color, hollowPen());
        m_painter.setBrush(m_how.palette.paper);
        m_painter.drawPath(stroker.createStroke(path).simplified());
    }

    void drawSegment(const QLineF& line, const LineStyle& style) {
        if (!style.hollow || !isWoven()) {
            setPen(style.color, style.hollow ? thick(0.7, 0.6) : solidWidth(), Qt::FlatCap);
            m_painter.drawLine(line);
            return;
        }
        const QLineF across = line.normalVector().unitVector();
        const QPointF half = (across.p2() - across.p1()) * (hollowWidth() - hollowPen()) / 2;
        setPen(style.color, hollowPen(), Qt::FlatCap);
        m_painter.drawLine(line.translated(half));
        m_painter.drawLine(line.translated(-half));
    }

    void drawString(const HeadGeometry::Lying& lying) {
        const LineStyle style = styleOf(lying.piece, lying.arm);
        if (!isWoven()) {
            drawSegment(lying.line, style);
            return;
        }
        // Under another string the line is left open a little wider than that string is.
        const double gap = (hollowWidth() / 2 + 1.3) / lying.line.length();
        double from = 0;
        for (const double under : lying.unders) {
            if (under - gap > from) {
                drawSegment({lying.line.pointAt(from), lying.line.pointAt(under - gap)}, style);
            }
            from = std::max(from, under + gap);
        }
        drawSegment({lying.line.pointAt(from), lying.line.p2()}, style);
    }

    void drawHoop() {
        QPainterPath band = m_head.edge(m_head.wall());
        band.addPath(m_head.innerEdge());
        band.setFillRule(Qt::OddEvenFill);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_how.palette.shade);
        m_painter.drawPath(band);
        setPen(m_how.palette.softInk, thick(0.8, 0.7));
        m_painter.drawPath(m_head.edge(m_head.wall()));
        setPen(m_how.palette.rule, thick(0.8, 0.7));
        m_painter.drawPath(m_head.innerEdge());
        if (!isWoven()) {
            return;
        }
        // The holes: a short stroke where each string goes through the wall, but for the head end of the mains, where
        // their numbers stand.
        setPen(m_how.palette.softInk, thick(0.5, 0.4), Qt::FlatCap);
        for (const HeadGeometry::Lying& lying : m_head.strings()) {
            const bool main = lying.id.kind != length::StringId::Kind::Cross;
            const bool firstIsHead = lying.chord.p1().y() < lying.chord.p2().y();
            if (!main || !firstIsHead) {
                m_painter.drawLine({lying.line.p1(), lying.chord.p1()});
            }
            if (!main || firstIsHead) {
                m_painter.drawLine({lying.line.p2(), lying.chord.p2()});
            }
        }
    }

    void drawText(const QPointF& centre, const QString& text, double height, const QColor& color, bool bold = false,
                  Qt::Alignment alignment = Qt::AlignCenter) {
        m_painter.setPen(color);
        constexpr double kWide = 400;
        QRectF box(centre.x() - kWide / 2, centre.y() - height, kWide, 2 * height);
        if (alignment.testFlag(Qt::AlignLeft)) {
            box.moveLeft(centre.x());
        } else if (alignment.testFlag(Qt::AlignRight)) {
            box.moveRight(centre.x());
        }
        PaperText{height, bold}.draw(m_painter, box, alignment | Qt::AlignVCenter, text);
    }

    /// Text as high as the gaps between its neighbours allow.
    [[nodiscard]] double numberHeight(bool crosses) const {
        const HeadGeometry::Lying* last = nullptr;
        double least = 20;
        for (const HeadGeometry::Lying& lying : m_head.strings()) {
            if ((lying.id.kind == length::StringId::Kind::Cross) != crosses) {
                continue;
            }
            if (last != nullptr) {
                const QPointF apart = lying.chord.center() - last->chord.center();
                const double gap = crosses ? std::abs(apart.y()) : std::abs(apart.x());
                least = gap > 1 ? std::min(least, gap) : least;
            }
            last = &lying;
        }
        return std::min(8.0, least * (crosses ? 0.75 : 0.68));
    }

    void drawNumbers() {
        const double mainHeight = std::min(numberHeight(false), m_head.wall() * 0.72);
        const double crossHeight = std::max(6.0, numberHeight(true));
        for (const HeadGeometry::Lying& lying : m_head.strings()) {
            const bool accented = isShortSide(lying.piece, lying.arm);
            const QColor color = accented ? m_how.palette.accent : m_how.palette.ink;
            if (lying.id.kind != length::StringId::Kind::Cross) {
                const QPointF top = lying.chord.p1().y() < lying.chord.p2().y() ? lying.chord.p1() : lying.chord.p2();
                const QString number = lying.id.number == 0 ? HeadWords::tr("C") : QString::number(lying.id.number);
                drawText(m_head.outside(top, m_head.wall() / 2), number, mainHeight, color, accented);
                continue;
            }
            const QPointF right = lying.line.p1().x() > lying.line.p2().x() ? lying.line.p1() : lying.line.p2();
            const QPointF place = m_head.outside(right, kNumbersOut);
            if (isNumbered(lying.id.number) && !isInTheWay(place)) {
                drawText(place, HeadWords::tr("X%1").arg(lying.id.number), crossHeight, color, accented, Qt::AlignLeft);
            }
        }
    }

    [[nodiscard]] bool isNumbered(int cross) const {
        return m_how.detail == HeadDetail::Page || cross == 1 || cross == m_head.crosses() || cross % 5 == 0;
    }

    /// A flag's pole stands there, and the flag says after which string.
    [[nodiscard]] bool isInTheWay(const QPointF& place) const {
        constexpr double kNear = 13;
        return std::ranges::any_of(m_head.ends(), [&](const HeadGeometry::Mark& end) {
            return QLineF(end.at + end.lean * kPole * 0.6, place).length() < kNear;
        });
    }

    void drawOrientation() {
        const QRectF hoop = m_head.edge(m_head.wall()).boundingRect();
        drawText({0, hoop.top() - kEndMargin + 6}, HeadWords::tr("head"), 7.5, m_how.palette.softInk);
        drawText({0, hoop.bottom() + kEndMargin - 6}, HeadWords::tr("throat"), 7.5, m_how.palette.softInk);
    }

    void drawMarks() {
        const bool words = m_how.detail != HeadDetail::Thumbnail;
        for (const HeadGeometry::Mark& start : m_head.starts()) {
            drawStart(start, words);
        }
        for (const HeadGeometry::Mark& end : m_head.ends()) {
            drawFlag(end, words);
        }
    }

    void drawStart(const HeadGeometry::Mark& start, bool words) {
        const bool knot = m_plan.pieces[start.piece].role == PieceRole::Crosses;
        const double radius = thick(3.2, 1.6);
        setPen(m_how.palette.ink, thick(1.2, 0.8));
        m_painter.setBrush(knot ? m_how.palette.ink : m_how.palette.paper);
        m_painter.drawEllipse(start.at, radius, radius);
        if (!words) {
            return;
        }
        if (knot) {
            const double way = start.outwards.x() >= 0 ? 1 : -1;
            label(besideFlags(start.at + QPointF(way * 15, 0), way), {way, 0}, HeadWords::tr("crosses start"),
                  m_how.palette.ink);
            return;
        }
        label(start.at + start.outwards * 10, start.outwards,
              m_plan.pieces.size() == 1 ? HeadWords::tr("start") : HeadWords::tr("mains start"), m_how.palette.ink);
    }

    /// Near `place`, where no flag at the same corner has its words.
    [[nodiscard]] QPointF besideFlags(const QPointF& place, double way) const {
        for (const double down : {4.0, 18.0, 32.0, -12.0}) {
            const QPointF tried = place + QPointF(way * (down - 4) * 0.8, down); // the hoop widens on the way down
            const bool covered = std::ranges::any_of(m_head.ends(), [&](const HeadGeometry::Mark& end) {
                const QPointF words = end.at + end.lean * kPole + QPointF(way * 13, 4);
                return std::abs(words.x() - tried.x()) < 60 && words.y() - 10 < tried.y() && tried.y() < words.y() + 20;
            });
            if (!covered) {
                return tried;
            }
        }
        return place;
    }

    /// Which way an arm begins: a head on its first string, and on the first after it turned from mains to crosses or
    /// back.
    void drawDirections() {
        const HeadGeometry::Lying* before = nullptr;
        for (const HeadGeometry::Lying& lying : m_head.strings()) {
            const bool sameArm = before != nullptr && before->piece == lying.piece && before->arm == lying.arm;
            if (!sameArm || before->id.isMain() != lying.id.isMain()) {
                drawArrowHead(lying);
            }
            before = &lying;
        }
    }

    void drawArrowHead(const HeadGeometry::Lying& lying) {
        constexpr double kLong = 9;
        constexpr double kWide = 7;
        const QPointF along = (lying.chord.p2() - lying.chord.p1()) / lying.chord.length();
        const QPointF across(-along.y(), along.x());
        const QPointF tip = lying.chord.p1() + along * (kLong + 4);
        const QPointF back = tip - along * kLong;
        QPainterPath head(tip);
        head.lineTo(back + across * kWide / 2);
        head.lineTo(back - across * kWide / 2);
        head.closeSubpath();
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(styleOf(lying.piece, lying.arm).color);
        m_painter.drawPath(head);
    }

    void drawFlag(const HeadGeometry::Mark& end, bool words) {
        const LineStyle style = styleOf(end.piece, end.arm);
        const double way = end.outwards.x() >= 0 ? 1 : -1;
        const QPointF top = end.at + end.lean * (words ? kPole : 12);
        setPen(style.color, thick(1.1, 0.8));
        m_painter.drawLine(end.at, top);
        const double size = thick(words ? 9 : 14, 4);
        QPainterPath pennant(top);
        pennant.lineTo(top + QPointF(way * size * 1.25, size * 0.4));
        pennant.lineTo(top + QPointF(0, size * 0.8));
        pennant.closeSubpath();
        m_painter.setBrush(style.hollow ? m_how.palette.paper : style.color);
        m_painter.drawPath(pennant);
        if (!words) {
            return;
        }
        const QPointF place = top + QPointF(way * size * 1.45, size * 0.4);
        label(place, {way, 0}, endText(end), style.color);
        drawText(place + QPointF(0, 9.5), HeadWords::tr("after %1").arg(lastString(end)), 7.5, m_how.palette.softInk,
                 false, way > 0 ? Qt::AlignLeft : Qt::AlignRight);
    }

    [[nodiscard]] QString lastString(const HeadGeometry::Mark& end) const {
        return QString::fromStdString(m_plan.pieces[end.piece].arms[end.arm].strings.back().id.text());
    }

    [[nodiscard]] QString endText(const HeadGeometry::Mark& end) const {
        switch (m_plan.pieces[end.piece].role) {
        case PieceRole::Mains:
            return HeadWords::tr("mains");
        case PieceRole::Crosses:
            return HeadWords::tr("crosses");
        case PieceRole::Whole:
            return end.arm == 0 ? HeadWords::tr("short side") : HeadWords::tr("long side");
        }
        return {};
    }

    void label(const QPointF& place, const QPointF& away, const QString& text, const QColor& color) {
        const Qt::Alignment alignment = away.x() > 0.35    ? Qt::AlignLeft
                                        : away.x() < -0.35 ? Qt::AlignRight
                                                           : Qt::AlignHCenter;
        drawText(place, text, 8, color, true, alignment);
    }

    /// A sample of each line with its name, under the picture.
    void drawKey() {
        std::vector<std::pair<LineStyle, QString>> entries;
        if (m_plan.pieces.size() == 1) {
            entries = {{styleOf(0, 0), HeadWords::tr("short side")}, {styleOf(0, 1), HeadWords::tr("long side")}};
        } else {
            entries = {{styleOf(0, 0), HeadWords::tr("mains")}, {styleOf(1, 0), HeadWords::tr("crosses")}};
        }
        constexpr double kSample = 22;
        constexpr double kStep = 90;
        double x = m_scene.center().x() - kStep * static_cast<double>(entries.size()) / 2 + 8;
        const double y = m_scene.bottom() - kKeyHeight / 2;
        for (const auto& [style, name] : entries) {
            drawSegment({x, y, x + kSample, y}, style);
            drawText({x + kSample + 5, y}, name, 8, m_how.palette.ink, false, Qt::AlignLeft);
            x += kStep;
        }
    }

    QPainter& m_painter;
    const length::CutPlan& m_plan;
    const HeadDrawing& m_how;
    HeadGeometry m_head;
    QRectF m_scene;
    double m_dots = 1; ///< of a usual screen, for a millimetre of the frame
};
} // namespace

void drawHead(QPainter& painter, const QRectF& area, const length::CutPlan& plan, const HeadDrawing& how) {
    if (area.isEmpty()) {
        return;
    }
    painter.save();
    HeadPainter(painter, plan, how, area).draw();
    painter.restore();
}

} // namespace rw::ui
