#include "ui/setup/house_plan.h"

#include "core/book/query.h"
#include "core/book/starting_figures.h"
#include "ui/words/phrase_words.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr double planMargin = 14; ///< pixels
constexpr double nearPixels = 6;  ///< of an edge that is held

bool exists(const HouseBook& book, HouseId id) {
    return book.find<House>(id);
}
bool exists(const HouseBook& book, BenchId id) {
    return book.find<Bench>(id);
}
bool exists(const HouseBook& book, ZoneId id) {
    return book.find<Zone>(id);
}

} // namespace

HousePlan::HousePlan(QWidget* parent) : QWidget(parent), m_palette(&lightPalette()) {
    setObjectName(QStringLiteral("housePlan"));
    setAccessibleName(tr("The house in plan"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setToolTip(
        tr("N and P go to the next thing and the one before. Arrows move it, Shift and arrows move its "
           "right and front edges, Enter keeps that, Escape leaves it."));
}

void HousePlan::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = wording;
    update();
}

void HousePlan::show(const HouseBook& book, std::optional<HouseId> house, Day day) {
    m_book = &book;
    m_house = house;
    m_day = day;
    const auto isThere = [&](const auto id) { return exists(book, id); };
    if (m_chosen && !std::visit(isThere, *m_chosen)) m_chosen.reset();
    m_held.reset();
    m_drawing = false;
    setDrawn(std::nullopt);
}

void HousePlan::choose(const PlanThing& thing) {
    m_chosen = thing;
    setDrawn(std::nullopt);
}

void HousePlan::setTool(Tool tool) {
    m_tool = tool;
    setCursor(tool == Tool::Choose ? Qt::ArrowCursor : Qt::CrossCursor);
    m_slot = {};
    setDrawn(std::nullopt);
    if (tool == Tool::BlockSlots) setFocus();
    Q_EMIT toolChanged(tool);
}

double HousePlan::scale() const {
    const QRectF house = planRect(m_book->get<House>(*m_house));
    return std::max(1e-6, std::min((width() - 2 * planMargin) / house.width(),
                                   (height() - 2 * planMargin) / house.height()));
}

QPointF HousePlan::onWidget(QPointF inHouse) const {
    const QRectF house = planRect(m_book->get<House>(*m_house));
    return QPointF((width() - scale() * house.width()) / 2, planMargin) + scale() * inHouse;
}

QRectF HousePlan::onWidget(const QRectF& inHouse) const {
    return {onWidget(inHouse.topLeft()), onWidget(inHouse.bottomRight())};
}

QPointF HousePlan::inHouse(QPointF at) const {
    return (at - onWidget(QPointF(0, 0))) / scale();
}

QString HousePlan::wordsOf(const PlanShape& shape) const {
    if (const auto* zone = std::get_if<Zone>(&shape); zone && m_tool == Tool::BlockSlots) {
        const bool isBlocked =
            std::find(zone->blocked.begin(), zone->blocked.end(), m_slot) != zone->blocked.end();
        return (zone->blocked.size() == 1 ? tr("Zone %1: %2 slot blocked; row %3, column %4 is %5")
                                          : tr("Zone %1: %2 slots blocked; row %3, column %4 is %5"))
            .arg(text(zone->name), m_wording.number(static_cast<int>(zone->blocked.size())),
                 m_wording.number(m_slot.row + 1), m_wording.number(m_slot.col + 1),
                 isBlocked ? tr("blocked") : tr("free"));
    }
    if (const auto* zone = std::get_if<Zone>(&shape))
        return tr("Zone %1: rows %2 to %3, columns %4 to %5")
            .arg(text(zone->name), m_wording.number(zone->row + 1), m_wording.number(zone->row + zone->rows),
                 m_wording.number(zone->col + 1), m_wording.number(zone->col + zone->cols));
    if (const auto* bench = std::get_if<Bench>(&shape))
        return tr("%1: %2 rows by %3 columns of slots, %4 m from the left end, %5 m from the back wall")
            .arg(text(bench->name), m_wording.number(bench->rows), m_wording.number(bench->cols),
                 m_wording.metres(bench->x), m_wording.metres(bench->y));
    const House& house = std::get<House>(shape);
    return tr("%1: %2 m by %3 m")
        .arg(text(house.name), m_wording.metres(house.length), m_wording.metres(house.width));
}

void HousePlan::setDrawn(std::optional<PlanShape> shape) {
    m_drawn = std::move(shape);
    QString words;
    if (m_drawn)
        words = wordsOf(*m_drawn);
    else if (m_chosen && m_house)
        words = wordsOf(shapeOf(*m_book, *m_chosen));
    setAccessibleDescription(words);
    Q_EMIT told(m_drawn ? tr("%1. Enter keeps it so, Escape leaves it.").arg(words) : words);
    update();
}

/// Draws what the tool draws, from where the button went down to here.
void HousePlan::drawNew(QPointF to) {
    if (m_tool == Tool::DrawBench) {
        const Bench like = unplacedBench(*m_book, *m_house);
        if (const auto bench = benchBetween(like, m_pressed, to)) return setDrawn(*bench);
        return setDrawn(std::nullopt);
    }
    if (m_tool == Tool::BlockSlots) {
        const Zone& zone = m_book->get<Zone>(std::get<ZoneId>(*m_chosen));
        m_slot = slotNear(*m_book, zone, to);
        return setDrawn(blockedBetween(zone, slotNear(*m_book, zone, m_pressed), m_slot));
    }
    const auto bench = std::get_if<BenchId>(&*m_chosen);
    if (bench) setDrawn(zoneBetween(m_book->get<Bench>(*bench), firstZone(*m_book, *bench), m_pressed, to));
}

void HousePlan::ask() {
    if (!m_drawn) return;
    const PlanShape shape = *m_drawn;
    setDrawn(std::nullopt);
    // A corner is seldom all that is blocked, so that tool stays in hand.
    if (m_tool != Tool::Choose && m_tool != Tool::BlockSlots) setTool(Tool::Choose);
    Q_EMIT wanted(shape);
}

void HousePlan::mousePressEvent(QMouseEvent* event) {
    if (!m_house || event->button() != Qt::LeftButton) return;
    m_pressed = inHouse(event->position());
    m_drawing = m_tool != Tool::Choose;
    if (m_drawing) {
        if (m_tool == Tool::DrawBench) return;
        if (m_tool == Tool::BlockSlots) {
            const PlanThing under = thingAt(*m_book, *m_house, m_pressed);
            m_drawing = std::holds_alternative<ZoneId>(under);
            if (!m_drawing) return;
            m_chosen = under;
            return drawNew(m_pressed);
        }
        // A zone is drawn on the bench under the hand, whatever lies there already.
        for (const BenchId bench : m_book->benchesOf(*m_house))
            if (planRect(m_book->get<Bench>(bench)).contains(m_pressed)) m_chosen = bench;
        m_drawing = m_chosen && std::holds_alternative<BenchId>(*m_chosen);
        return;
    }
    // What is chosen is held by its edge even where another thing lies beside it.
    const double near = nearPixels / scale();
    PlanThing thing = thingAt(*m_book, *m_house, m_pressed);
    if (m_chosen && gripAt(*m_book, *m_chosen, m_pressed, near).any()) {
        const Grip grip = gripAt(*m_book, *m_chosen, m_pressed, near);
        if (!grip.whole) thing = *m_chosen;
    }
    choose(thing);
    Q_EMIT chosen(thing); // may show the house anew, which lets go
    m_grip = gripAt(*m_book, thing, m_pressed, near);
    m_held = shapeOf(*m_book, thing);
}

void HousePlan::mouseMoveEvent(QMouseEvent* event) {
    if (!m_house) return;
    const QPointF at = inHouse(event->position());
    if (!(event->buttons() & Qt::LeftButton)) return setCursorAt(at);
    if (m_drawing) return drawNew(at);
    if (!m_held || !m_grip.any()) return;
    const PlanShape shape = dragged(*m_book, *m_held, m_grip, at - m_pressed);
    setDrawn(shape == *m_held ? std::nullopt : std::optional(shape));
}

void HousePlan::mouseReleaseEvent(QMouseEvent*) {
    m_held.reset();
    m_drawing = false;
    ask();
}

void HousePlan::setCursorAt(QPointF at) {
    if (m_tool != Tool::Choose || !m_chosen) return;
    const Grip grip = gripAt(*m_book, *m_chosen, at, nearPixels / scale());
    const bool across = grip.left || grip.right;
    const bool along = grip.top || grip.bottom;
    const bool falling = (grip.left && grip.top) || (grip.right && grip.bottom);
    setCursor(across && along ? (falling ? Qt::SizeFDiagCursor : Qt::SizeBDiagCursor)
              : across        ? Qt::SizeHorCursor
              : along         ? Qt::SizeVerCursor
              : grip.whole    ? Qt::SizeAllCursor
                              : Qt::ArrowCursor);
}

void HousePlan::step(int right, int front, bool resize) {
    if (!m_house || !m_chosen) return;
    const PlanShape now = m_drawn.value_or(shapeOf(*m_book, *m_chosen));
    setDrawn(stepped(*m_book, now, right, front, resize));
}

void HousePlan::chooseNext(int by) {
    if (!m_house) return;
    std::vector<PlanThing> things{*m_house};
    for (const BenchId bench : m_book->benchesOf(*m_house)) {
        things.emplace_back(bench);
        for (const ZoneId zone : m_book->zonesOf(bench)) things.emplace_back(zone);
    }
    const auto found = m_chosen ? std::find(things.begin(), things.end(), *m_chosen) : things.begin();
    const auto count = static_cast<std::ptrdiff_t>(things.size());
    const auto at = found == things.end() ? 0 : found - things.begin();
    const PlanThing next = things[static_cast<std::size_t>((at + by + count) % count)];
    choose(next);
    Q_EMIT chosen(next);
}

const Zone* HousePlan::blockedZone() const {
    if (m_drawn) return std::get_if<Zone>(&*m_drawn);
    const auto* id = m_house && m_chosen ? std::get_if<ZoneId>(&*m_chosen) : nullptr;
    return id ? &m_book->get<Zone>(*id) : nullptr;
}

/// Whether the key meant a slot to be blocked.
bool HousePlan::blockByKey(int key) {
    const Zone* zone = m_tool == Tool::BlockSlots ? blockedZone() : nullptr;
    if (!zone) return false;
    if (key == Qt::Key_Space) {
        setDrawn(blockedBetween(*zone, m_slot, m_slot));
        return true;
    }
    const int right = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
    const int front = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    if (right == 0 && front == 0) return false;
    m_slot = {std::clamp(m_slot.row + front, 0, zone->rows - 1),
              std::clamp(m_slot.col + right, 0, zone->cols - 1)};
    setDrawn(m_drawn);
    return true;
}

void HousePlan::keyPressEvent(QKeyEvent* event) {
    if (blockByKey(event->key())) return;
    const bool resize = event->modifiers() & Qt::ShiftModifier;
    switch (event->key()) {
    case Qt::Key_Left:
        return step(-1, 0, resize);
    case Qt::Key_Right:
        return step(1, 0, resize);
    case Qt::Key_Up:
        return step(0, -1, resize);
    case Qt::Key_Down:
        return step(0, 1, resize);
    case Qt::Key_N:
        return chooseNext(1);
    case Qt::Key_P:
        return chooseNext(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return ask();
    case Qt::Key_Escape:
        m_held.reset();
        m_drawing = false;
        if (m_tool != Tool::Choose) setTool(Tool::Choose);
        return setDrawn(std::nullopt);
    default:
        QWidget::keyPressEvent(event);
    }
}

void HousePlan::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void HousePlan::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace warmbench::ui
