#include "ui/place/place.h"

namespace warmbench::ui {

Place::Place(const QString& name, const QString& title, QWidget* parent)
    : QWidget(parent), m_name(name), m_title(title) {
    setObjectName(name + QStringLiteral("Page"));
}

void Place::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
}

} // namespace warmbench::ui
