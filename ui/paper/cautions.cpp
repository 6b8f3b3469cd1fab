#include "ui/paper/cautions.h"

#include "ui/paper/html_table.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"

namespace warmbench::ui {

QString cautionsHtml(const std::set<Hazard>& hazards) {
    QString html = heading(say("Care"));
    for (const Hazard hazard : hazards)
        for (const SafetyNote& note : safetyNotes(hazard)) html += paragraph(told(note.text));
    return html + paragraph(told(safetyDeference));
}

} // namespace warmbench::ui
