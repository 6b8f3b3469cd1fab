#include "ui/placing/placing_hand.h"

#include "core/book/query.h"
#include "ui/map/next_target.h"
#include "ui/placing/place_words.h"

#include <QKeyEvent>

#include <algorithm>

namespace warmbench::ui {

Outcome PlacingHand::take(const HouseBook& book, BatchId batch, std::vector<int> containers, Day day) {
    auto forecast = std::make_unique<forecast::BookForecast>(book, day, std::set{batch});
    auto carried = placing::takeUp(book, batch, std::move(containers), day, forecast.get());
    if (!carried) return carried.refusal();
    m_book = &book;
    m_forecast = std::move(forecast);
    m_zone.reset();
    m_turned = false;
    m_dragging = false;
    hold(std::move(*carried));
    return std::nullopt;
}

Outcome PlacingHand::takeInstead(std::vector<int> containers) {
    if (!m_suitability) return std::nullopt;
    const placing::Carried& before = m_suitability->carried();
    auto carried =
        placing::takeUp(*m_book, before.batch, std::move(containers), before.day, m_forecast.get());
    if (!carried) return carried.refusal();
    hold(std::move(*carried));
    return std::nullopt;
}

void PlacingHand::hold(placing::Carried carried) {
    m_suitability = std::make_unique<placing::Suitability>(*m_book, std::move(carried));
    m_state = State::Carrying;
    m_slots.clear();
    if (m_zone) m_slots = m_suitability->slotsAt(*m_zone, m_aim, m_turned);
    Q_EMIT heldChanged();
    Q_EMIT aimChanged();
}

void PlacingHand::putBack() {
    if (m_state == State::Empty) return;
    m_state = State::Empty;
    m_suitability.reset();
    m_zone.reset();
    m_slots.clear();
    Q_EMIT heldChanged();
}

bool PlacingHand::fits() const {
    const placing::ZoneVerdict* verdict = m_zone && m_suitability ? m_suitability->find(*m_zone) : nullptr;
    return verdict && verdict->suits() && m_slots.size() == m_suitability->carried().containers.size();
}

QString PlacingHand::title() const {
    return m_suitability ? carriedWords(*m_book, m_suitability->carried(), *m_wording) : QString();
}

QStringList PlacingHand::words() const {
    if (!m_suitability) return {};
    if (!m_zone) return {tr("Aim at a zone: those that suit have a frame and a tick.")};
    const placing::ZoneVerdict& verdict = *m_suitability->find(*m_zone);
    if (m_state == State::Asking)
        return {
            tr("These cuttings have been struck. Move them to %1 from %2 on?")
                .arg(text(zoneTitle(*m_book, *m_zone)), m_wording->shortDate(m_suitability->carried().day))};
    QStringList lines = verdictWords(*m_book, m_suitability->carried(), verdict, *m_wording);
    if (verdict.suits() && !fits()) lines += tr("Turned like this they do not all fit; turn them with T.");
    return lines;
}

void PlacingHand::aimAt(ZoneId zone, Slot slot) {
    if (m_state != State::Carrying || (m_zone == zone && m_aim == slot)) return;
    m_zone = zone;
    m_aim = slot;
    m_slots = m_suitability->slotsAt(zone, slot, m_turned);
    Q_EMIT aimChanged();
}

void PlacingHand::aimNowhere() {
    if (m_state != State::Carrying || !m_zone) return;
    m_zone.reset();
    m_slots.clear();
    Q_EMIT aimChanged();
}

void PlacingHand::turn() {
    if (m_state != State::Carrying || !m_suitability->carried().turnable) return;
    m_turned = !m_turned;
    if (m_zone) m_slots = m_suitability->slotsAt(*m_zone, m_aim, m_turned);
    Q_EMIT aimChanged();
}

void PlacingHand::putDown() {
    if (m_state != State::Carrying || !fits()) return;
    if (m_suitability->carried().struck) {
        m_state = State::Asking;
        Q_EMIT aimChanged();
        return;
    }
    m_state = State::Asking;
    answer(true);
}

void PlacingHand::answer(bool yes) {
    if (m_state != State::Asking) return;
    if (!yes) {
        m_state = State::Carrying;
        m_dragging = false;
        Q_EMIT aimChanged();
        return;
    }
    const auto command = m_suitability->placing(*m_zone, m_slots);
    putBack();
    if (command) Q_EMIT placed(*command);
}

void PlacingHand::pointAt(const MapScene& scene, const MapHit& hit) {
    if (!hit.zone || !hit.slot) return aimNowhere();
    aimAt(scene.zones[nth(*hit.zone)].id, *hit.slot);
}

void PlacingHand::letGo() {
    if (fits()) return putDown();
    // A drag that ends where it can't stand is taken back; a click there says why and goes on.
    if (m_dragging && m_state == State::Carrying) putBack();
}

void PlacingHand::step(const MapScene& scene, const MapLayout& layout, QPoint direction) {
    const auto at = std::find_if(scene.zones.begin(), scene.zones.end(),
                                 [&](const SceneZone& zone) { return m_zone == zone.id; });
    if (at == scene.zones.end()) {
        if (!scene.zones.empty()) aimAt(scene.zones.front().id, {0, 0});
        return;
    }
    const Slot next{m_aim.row + direction.y(), m_aim.col + direction.x()};
    if (next.row >= 0 && next.col >= 0 && next.row < at->rows && next.col < at->cols)
        return aimAt(at->id, next);
    const auto beside = nextTarget(scene, layout, Selection{at->id}, direction);
    const auto* id = beside ? std::get_if<ZoneId>(&*beside) : nullptr;
    const SceneZone* zone = id ? scene.find(*id) : nullptr;
    if (!zone) return;
    // Into it over the edge that faces the zone left.
    const int row = direction.y() > 0 ? 0 : direction.y() < 0 ? zone->rows - 1 : m_aim.row;
    const int col = direction.x() > 0 ? 0 : direction.x() < 0 ? zone->cols - 1 : m_aim.col;
    aimAt(zone->id, {std::clamp(row, 0, zone->rows - 1), std::clamp(col, 0, zone->cols - 1)});
}

void PlacingHand::goToSuitable(const MapScene& scene, int by) {
    const int count = static_cast<int>(scene.zones.size());
    int at = by > 0 ? -1 : 0;
    for (int i = 0; i < count; ++i)
        if (m_zone == scene.zones[nth(i)].id) at = i;
    for (int i = 1; i <= count; ++i) {
        const SceneZone& zone = scene.zones[nth(((at + by * i) % count + count) % count)];
        const placing::ZoneVerdict* verdict = m_suitability->find(zone.id);
        if (!verdict || !verdict->suits() || verdict->best.empty()) continue;
        const SlotRect& first = verdict->best.front();
        return aimAt(zone.id, {first.row, first.col});
    }
}

bool PlacingHand::key(const MapScene& scene, const MapLayout& layout, const QKeyEvent& event) {
    if (!isActive()) return false;
    const bool asking = m_state == State::Asking;
    switch (event.key()) {
    case Qt::Key_Escape:
        if (asking)
            answer(false);
        else
            putBack();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (asking)
            answer(true);
        else
            putDown();
        return true;
    default:
        break;
    }
    if (asking || event.modifiers().testFlag(Qt::ControlModifier)) return false;
    switch (event.key()) {
    case Qt::Key_Left:
        step(scene, layout, {-1, 0});
        return true;
    case Qt::Key_Right:
        step(scene, layout, {1, 0});
        return true;
    case Qt::Key_Up:
        step(scene, layout, {0, -1});
        return true;
    case Qt::Key_Down:
        step(scene, layout, {0, 1});
        return true;
    case Qt::Key_Tab:
        goToSuitable(scene, 1);
        return true;
    case Qt::Key_Backtab:
        goToSuitable(scene, -1);
        return true;
    case Qt::Key_T:
        turn();
        return true;
    default:
        return false;
    }
}

} // namespace warmbench::ui
