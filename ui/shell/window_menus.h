#pragma once

#include <QObject>

class QAction;
class QActionGroup;
class QMainWindow;
class QMenu;

namespace warmbench::ui {

/// The window's menus: each entry is an action that the window connects and enables. `places` is filled by
/// the window.
struct WindowMenus {
    explicit WindowMenus(QMainWindow& window);

    QAction* create;
    QAction* open;
    QAction* openShared;
    QAction* backups;
    QAction* takeCopy;
    QAction* bringHome;
    QAction* saveMap;
    QAction* print;
    QAction* quit;
    QMenu* places;
    QAction* undo;
    QAction* redo;
    QAction* now;
    QAction* find;
    QAction* systemTheme;
    QAction* lightTheme;
    QAction* darkTheme;
    QAction* fahrenheit;
    QActionGroup* languages; ///< an action for each; its data is what setLanguage of the window takes
    QAction* zoomIn;
    QAction* zoomOut;
    QAction* fit;
    QAction* dayBack;
    QAction* dayOn;
    QAction* today;
    QAction* play;
    QMenu* batches; ///< of the selected batch; it is the one under the pointer, too
    QAction* move;
    QAction* split;
    QAction* strike;
    QAction* check;
    QAction* wean;
    QAction* potOn;
    QAction* labels;
    QAction* removeBatch;
    QAction* showBatch;
    QAction* planDays;
    QAction* keys;
    QAction* about;
};

} // namespace warmbench::ui
