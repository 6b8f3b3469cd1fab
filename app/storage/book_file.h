#pragma once

#include "app/storage/store.h"
#include "app/storage/undo_steps.h"
#include "core/book/command.h"
#include "core/book/house_book.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace warmbench::app {

/// Who did what when: one line of a book's journal.
struct JournalLine {
    std::int64_t seq = 0;
    std::string at; ///< UTC, ISO 8601
    std::string who;
    std::string words;
    friend bool operator==(const JournalLine&, const JournalLine&) = default;
};
/// The same with what it changed.
struct JournalEntry : JournalLine {
    Change change;
};

/// A house book that is kept, in a file or in a database that others share. What it says is done is kept:
/// every change, its rows and its journal entry, is one transaction that has been committed before `perform`
/// returns.
///
/// Others may change the same book: before each change their newer journal entries are taken over, and what
/// was asked is done on the book as it is then, or refused where somebody was faster with the same things.
/// Refusals that concern the store have its name as their place.
class BookFile {
public:
    /// Makes a new book; refused where there is one of that name already. `path` is the name of a file, or
    /// the address of a database (`postgresql://...`).
    static Outcome create(const std::string& path, const HouseBook& book,
                          const std::string& said = pattern("Make the book"));
    /// Opens a book. Refused, and the store not changed: none there, no house book, damaged, written by a
    /// newer program, for writing also where it can't be written. An older one that is opened for writing is
    /// brought up to date.
    static Result<std::unique_ptr<BookFile>> open(const std::string& path, OpenMode mode);

    BookFile(const BookFile&) = delete;
    BookFile& operator=(const BookFile&) = delete;
    ~BookFile();

    [[nodiscard]] const HouseBook& book() const { return m_book; }
    [[nodiscard]] const std::string& path() const { return m_store->name(); }

    /// Does a command and keeps it, whole or not at all.
    Outcome perform(const Command& command);
    /// Fills an empty book with all of another, as one step; refused where it is not empty.
    Outcome adopt(const HouseBook& other, const std::string& said);
    /// Takes back what was done last by whom the journal names now, in this run of the program or before.
    Outcome undo();
    Outcome redo();
    /// What undo or redo would do, in words; empty where there is nothing.
    [[nodiscard]] std::string undoWords() const {
        return m_steps.toUndo() ? m_steps.toUndo()->words : std::string{};
    }
    [[nodiscard]] std::string redoWords() const {
        return m_steps.toRedo() ? m_steps.toRedo()->words : std::string{};
    }
    /// Takes over what others have written since; says how many changes that were.
    Result<int> catchUp();
    /// Whether the file or database can still be reached. Where not, the book can be read as it was.
    [[nodiscard]] bool isReachable() const { return m_store->isReachable(); }
    /// Tells from any thread whether `reopen` would do; may wait for a server.
    [[nodiscard]] std::function<bool()> prober() const { return m_store->prober(); }
    /// Opens the book again after it could not be reached, and takes over what others have done meanwhile.
    Outcome reopen();
    /// Has `news` called from the event loop soon after others have changed the book; false where it must be
    /// asked for (`catchUp`).
    bool listen(std::function<void()> news) { return m_store->listen(std::move(news)); }
    /// Hears of every change of the book, after it is kept. An empty one says that all may have changed.
    void onChange(std::function<void(const Change&)> listener) { m_listener = std::move(listener); }

    /// The whole journal, the first entry first.
    [[nodiscard]] Result<std::vector<JournalEntry>> journal() const;
    /// The same without the changes, which most readers have no need of.
    [[nodiscard]] Result<std::vector<JournalLine>> journalLines() const;
    /// The book as it was after a journal entry. What others have written since is taken over first.
    [[nodiscard]] Result<HouseBook> bookAfter(std::int64_t seq);
    /// All that is wrong with the file: the database's own checks, references, rules of the book, the
    /// journal's chain and whether the journal leads to what the tables hold. Empty for a sound one.
    [[nodiscard]] std::vector<Refusal> check() const;
    /// Writes the whole book with its journal as a new one, in a file or a shared database, opens it and
    /// compares. Nothing is lost or changed by that, either way.
    [[nodiscard]] Outcome copyTo(const std::string& path) const;
    /// Writes a consistent copy to a new file, opens it to see that it is sound, and only then gives it its
    /// name. Refused where there is a file of that name.
    Outcome backup(const std::string& path) const;

    /// From now on the book backs itself up before each day's first change (backups.h), where it is a file. A
    /// backup that can't be made hinders no work; `lastBackupTrouble` tells of it.
    void keepBackups(bool keep) { m_keepsBackups = keep; }
    [[nodiscard]] const Outcome& lastBackupTrouble() const { return m_backupTrouble; }
    /// Backs the book up unless that day's backup is there, and takes away those that are too many.
    Outcome backUpOn(Day today);

private:
    class Transaction;
    struct News;
    explicit BookFile(std::unique_ptr<Store> store);
    Outcome load();
    void backUpToday();
    Result<int> takeOver(News& news);
    Outcome keepHere(const Change& change, const std::string& words, const News& news);
    Outcome keep(const Change& change, const std::string& words);
    Outcome keepNow(const Change& change, const std::string& words);
    Result<Change> reverse(const UndoSteps::Step& step, const std::string& said);

    std::unique_ptr<Store> m_store;
    HouseBook m_book;
    std::int64_t m_seq = 0; ///< of the last journal entry that the book in memory knows
    std::string m_chain;    ///< its hash
    bool m_keepsBackups = false;
    Day m_backedUpOn = Day::first();
    Outcome m_backupTrouble;
    UndoSteps m_steps;
    std::function<void(const Change&)> m_listener;
};

} // namespace warmbench::app
