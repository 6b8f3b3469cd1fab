#include "ui/map/bench_map_access.h"

#include "ui/map/bench_map.h"
#include "ui/map/zone_label.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>

#include <map>

namespace warmbench::ui {
namespace {

/// A zone, or a batch in a zone, as an assistive program sees it. `index` is that in the scene.
class ItemAccess : public QAccessibleInterface {
public:
    ItemAccess(BenchMap& map, bool batch, int index) : m_map(&map), m_batch(batch), m_index(index) {}

    [[nodiscard]] bool isValid() const override {
        if (!m_map || m_index < 0) return false;
        const std::size_t count = m_batch ? m_map->scene().stays.size() : m_map->scene().zones.size();
        return static_cast<std::size_t>(m_index) < count;
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->rect().contains(x, y)) return child(i);
        return nullptr;
    }
    [[nodiscard]] int childCount() const override {
        if (m_batch || !isValid()) return 0;
        return zone().endStay - zone().firstStay;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < childCount(); ++i)
            if (this->child(i) == child) return i;
        return -1;
    }
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        if (kind != QAccessible::Name || !isValid()) return {};
        return m_batch ? staySentence(m_map->scene(), stay(), m_map->wording())
                       : zoneSentence(zone(), m_map->wording());
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QRect rect() const override {
        if (!isValid()) return {};
        const QRect area = m_map->mapLayout().extent(m_map->scene(), selection());
        return area.translated(m_map->origin()).translated(m_map->viewport()->mapToGlobal(QPoint(0, 0)));
    }
    [[nodiscard]] QAccessible::Role role() const override {
        return m_batch ? QAccessible::ListItem : QAccessible::List;
    }
    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state;
        state.selectable = true;
        state.focusable = true;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        state.selected = m_map->selection() == selection();
        state.focused = state.selected && m_map->hasFocus();
        return state;
    }

private:
    [[nodiscard]] const SceneZone& zone() const {
        return m_map->scene().zones[static_cast<std::size_t>(m_index)];
    }
    [[nodiscard]] const SceneStay& stay() const {
        return m_map->scene().stays[static_cast<std::size_t>(m_index)];
    }
    [[nodiscard]] Selection selection() const {
        return m_batch ? Selection{stay().batch} : Selection{zone().id};
    }

    QPointer<BenchMap> m_map;
    bool m_batch;
    int m_index;
};

/// The map itself. It keeps the interfaces of its items, by their index, as long as it lives.
class MapAccess : public QAccessibleWidget {
public:
    explicit MapAccess(BenchMap& map) : QAccessibleWidget(&map, QAccessible::Grouping), m_map(map) {}
    ~MapAccess() override {
        for (const auto& [key, id] : m_items) QAccessible::deleteAccessibleInterface(id);
    }
    MapAccess(const MapAccess&) = delete;
    MapAccess& operator=(const MapAccess&) = delete;

    [[nodiscard]] int childCount() const override { return static_cast<int>(m_map.scene().zones.size()); }
    [[nodiscard]] QAccessibleInterface* child(int index) const override { return item(false, index); }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < childCount(); ++i)
            if (item(false, i) == child) return i;
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0; i < childCount(); ++i)
            if (item(false, i)->rect().contains(x, y)) return item(false, i);
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* item(bool batch, int index) const {
        const auto key = std::pair(batch, index);
        const auto found = m_items.find(key);
        if (found != m_items.end()) return QAccessible::accessibleInterface(found->second);
        auto* made = new ItemAccess(m_map, batch, index); // owned by QAccessible from here on
        m_items[key] = QAccessible::registerAccessibleInterface(made);
        return made;
    }

private:
    BenchMap& m_map;
    mutable std::map<std::pair<bool, int>, QAccessible::Id> m_items;
};

MapAccess* accessOf(BenchMap& map) {
    return dynamic_cast<MapAccess*>(QAccessible::queryAccessibleInterface(&map));
}

QAccessibleInterface* ItemAccess::parent() const {
    if (!m_map) return nullptr;
    MapAccess* map = accessOf(*m_map);
    return m_batch && map ? map->item(false, stay().zone) : static_cast<QAccessibleInterface*>(map);
}

QAccessibleInterface* ItemAccess::child(int index) const {
    if (index < 0 || index >= childCount()) return nullptr;
    MapAccess* map = accessOf(*m_map);
    return map ? map->item(true, zone().firstStay + index) : nullptr;
}

QAccessibleInterface* makeAccess(const QString&, QObject* object) {
    auto* map = qobject_cast<BenchMap*>(object);
    return map ? new MapAccess(*map) : nullptr;
}

} // namespace

void installBenchMapAccess() {
    QAccessible::installFactory(makeAccess);
}

void tellAccessibility(BenchMap& map) {
    if (!QAccessible::isActive()) return;
    MapAccess* access = accessOf(map);
    if (!access) return;
    const MapScene& scene = map.scene();
    QAccessibleInterface* chosen = nullptr;
    for (std::size_t i = 0; i < scene.zones.size(); ++i)
        if (map.selection() == Selection{scene.zones[i].id})
            chosen = access->item(false, static_cast<int>(i));
    for (std::size_t i = 0; i < scene.stays.size(); ++i)
        if (map.selection() == Selection{scene.stays[i].batch})
            chosen = access->item(true, static_cast<int>(i));
    if (!chosen) return;
    QAccessibleEvent focused(chosen, QAccessible::Focus);
    QAccessible::updateAccessibility(&focused);
}

} // namespace warmbench::ui
