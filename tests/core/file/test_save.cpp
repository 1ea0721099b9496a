// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <cerrno>
#include <fstream>

#include "core/file/file_operations.h"
#include "core/file/whole_file.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

using namespace howlmap;
namespace fs = std::filesystem;

namespace {
std::string bytes_of(const fs::path& path) { return read_whole_file(path, 64u << 20).value_or("(not readable)"); }

void put(const fs::path& path, std::string_view bytes) { std::ofstream(path, std::ios::binary) << bytes; }

int entries(const fs::path& folder) {
    return static_cast<int>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

/// Lets the k-th call fail, once or from then on.
class FaultyFiles : public FileOperations {
  public:
    FaultyFiles(int failing, bool for_ever, int error) : failing_(failing), for_ever_(for_ever), error_(error) {}
    int calls = 0;
    bool failed = false;

    int open(const char* path, int flags, mode_t mode) override {
        return fails() ? -1 : FileOperations::open(path, flags, mode);
    }
    ssize_t write(int file, const void* bytes, std::size_t count) override {
        if (!fails()) return FileOperations::write(file, bytes, std::min<std::size_t>(count, 3000));
        FileOperations::write(file, bytes, count / 2);  // a disk takes some of it first
        errno = error_;
        return -1;
    }
    int sync(int file) override { return fails() ? -1 : FileOperations::sync(file); }
    int set_mode(int file, mode_t mode) override { return fails() ? -1 : FileOperations::set_mode(file, mode); }
    int give_name(int file, const char* path) override { return fails() ? -1 : FileOperations::give_name(file, path); }
    int rename(const char* from, const char* to) override { return fails() ? -1 : FileOperations::rename(from, to); }

  private:
    bool fails() {
        ++calls;
        if (calls != failing_ && !(for_ever_ && calls > failing_)) return false;
        failed = true;
        errno = error_;
        return true;
    }
    int failing_;
    bool for_ever_;
    int error_;
};

/// A folder to save in that is gone afterwards.
struct Folder {
    QTemporaryDir dir;
    fs::path path = dir.path().toStdString();
    fs::path file = path / "gig.howlmap";
};
}  // namespace

class TestSave : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void aNewFileIsWritten() {
        Folder in;
        QVERIFY(save_atomically(in.file, "hello"));
        QCOMPARE(bytes_of(in.file), std::string("hello"));
        QCOMPARE(entries(in.path), 1);
    }

    void aNewFileObeysTheMask() {
        Folder in;
        const mode_t before = ::umask(027);
        QVERIFY(save_atomically(in.file, "hello"));
        ::umask(before);
        struct stat info {};
        ::stat(in.file.c_str(), &info);
        QCOMPARE(info.st_mode & 07777, 0640u);
    }

    void anOldFileKeepsItsMode() {
        Folder in;
        put(in.file, "old");
        ::chmod(in.file.c_str(), 0600);
        QVERIFY(save_atomically(in.file, "new"));
        struct stat info {};
        ::stat(in.file.c_str(), &info);
        QCOMPARE(info.st_mode & 07777, 0600u);
        QCOMPARE(bytes_of(in.file), std::string("new"));
    }

    void anEmptyTextIsWrittenToo() {
        Folder in;
        put(in.file, "old");
        QVERIFY(save_atomically(in.file, ""));
        QCOMPARE(bytes_of(in.file), std::string());
    }

    void aBareNameGoesToTheWorkingFolder() {
        Folder in;
        const fs::path before = fs::current_path();
        fs::current_path(in.path);
        const bool saved = save_atomically("bare.howlmap", "hello").has_value();
        fs::current_path(before);
        QVERIFY(saved);
        QCOMPARE(bytes_of(in.path / "bare.howlmap"), std::string("hello"));
    }

    // Fault loop: the k-th call fails, once and for ever, until a save makes fewer than k calls.
    void everyCallMayFail_data() {
        QTest::addColumn<bool>("for_ever");
        QTest::addColumn<int>("error");
        QTest::addColumn<bool>("replaces");
        for (const bool for_ever : {false, true})
            for (const int error : {EIO, ENOSPC, EACCES, EMFILE})
                for (const bool replaces : {false, true})
                    QTest::addRow("%s, error %d, %s", for_ever ? "for ever" : "once", error,
                                  replaces ? "old file" : "no file")
                        << for_ever << error << replaces;
    }
    void everyCallMayFail() {
        QFETCH(bool, for_ever);
        QFETCH(int, error);
        QFETCH(bool, replaces);
        const std::string before = "the old content", after(10000, 'x');
        int failures = 0;
        for (int call = 1;; ++call) {
            Folder in;
            if (replaces) put(in.file, before);
            FaultyFiles files(call, for_ever, error);
            const auto saved = save_atomically(in.file, after, files);
            if (!files.failed) {
                QVERIFY(saved);
                break;
            }
            ++failures;
            const std::string now = fs::exists(in.file) ? bytes_of(in.file) : "";
            QVERIFY2(now == after || now == (replaces ? before : ""),
                     qPrintable(QString("mixed at call %1").arg(call)));
            QVERIFY2(saved ? now == after : !saved.error().empty(), "silent");
            QCOMPARE(entries(in.path), static_cast<int>(fs::exists(in.file)));
        }
        QVERIFY(failures >= 8);  // open, writes, sync, name, rename, folder: the loop has been where it should
    }

    void messagesAreSentencesForAPlayer() {
        Folder in;
        put(in.file, "old");
        FaultyFiles files(2, true, ENOSPC);
        const auto saved = save_atomically(in.file, "new", files);
        QVERIFY(!saved);
        QCOMPARE(saved.error(), "\"" + in.file.string() +
                                    "\" could not be saved: the disk is full. What was there before is untouched.");
    }

    void theNameIsUsedWhenTheSystemHasNoUnnamedFiles() {
        Folder in;
        FaultyFiles files(1, false, EOPNOTSUPP);
        QVERIFY(save_atomically(in.file, "hello", files));
        QCOMPARE(bytes_of(in.file), std::string("hello"));
        QCOMPARE(entries(in.path), 1);
    }

    void linksAreFollowed() {
        Folder in;
        put(in.path / "real.howlmap", "old");
        fs::create_symlink("real.howlmap", in.path / "middle");
        fs::create_symlink(in.path / "middle", in.file);
        QVERIFY(save_atomically(in.file, "new"));
        QVERIFY(fs::is_symlink(in.file));
        QCOMPARE(bytes_of(in.path / "real.howlmap"), std::string("new"));
        QCOMPARE(entries(in.path), 3);
    }

    void aLinkToNothingYetIsFollowed() {
        Folder in;
        fs::create_symlink("later.howlmap", in.file);
        QVERIFY(save_atomically(in.file, "new"));
        QCOMPARE(bytes_of(in.path / "later.howlmap"), std::string("new"));
    }

    void anotherNameOfTheFileKeepsTheOldContent() {
        Folder in;
        put(in.file, "old");
        fs::create_hard_link(in.file, in.path / "copy");
        QVERIFY(save_atomically(in.file, "new"));
        QCOMPARE(bytes_of(in.file), std::string("new"));
        QCOMPARE(bytes_of(in.path / "copy"), std::string("old"));
    }

    void badTargetsAreRefused_data() {
        QTest::addColumn<QString>("target");
        QTest::addColumn<QString>("why");
        QTest::newRow("folder") << "folder"
                                << "it is a folder";
        QTest::newRow("pipe") << "pipe"
                              << "it is a device, not a file";
        QTest::newRow("link to a pipe") << "link-to-pipe"
                                        << "it is a device, not a file";
        QTest::newRow("circle of links") << "circle"
                                         << "round in a circle";
        QTest::newRow("folder gone") << "gone/gig.howlmap"
                                     << "its folder is not there";
        QTest::newRow("file as folder") << "plain/gig.howlmap"
                                        << "its folder is not there";
        QTest::newRow("folder of no files") << "/proc/x"
                                            << "no file can be made in its folder";
        QTest::newRow("name too long") << QString(256, 'n') << "the name is too long";
    }
    void badTargetsAreRefused() {
        QFETCH(QString, target);
        QFETCH(QString, why);
        Folder in;
        fs::create_directory(in.path / "folder");
        ::mkfifo((in.path / "pipe").c_str(), 0600);
        put(in.path / "plain", "plain");
        fs::create_symlink("pipe", in.path / "link-to-pipe");
        fs::create_symlink("circle", in.path / "circle");
        const int before = entries(in.path);
        const auto saved = save_atomically(in.path / target.toStdString(), "new");
        QVERIFY(!saved);
        QVERIFY2(saved.error().find(why.toStdString()) != std::string::npos, saved.error().c_str());
        QCOMPARE(entries(in.path), before);
        QVERIFY(fs::is_fifo(in.path / "pipe"));
        QCOMPARE(bytes_of(in.path / "plain"), std::string("plain"));
    }

    void longAndForeignNamesAreFine() {
        Folder in;
        for (const std::string& name : {std::string(255, 'n'),
                                        std::string("Gr\xF6\xDF"
                                                    "e.howlmap"),
                                        std::string("a\nb")}) {
            put(in.path / name, "old");
            QVERIFY(save_atomically(in.path / name, "new"));
            QCOMPARE(bytes_of(in.path / name), std::string("new"));
        }
        QCOMPARE(entries(in.path), 3);
        const auto refused = save_atomically(in.path / "gone" /
                                                 "Gr\xF6\xDF"
                                                 "e",
                                             "new");
        QVERIFY(!refused);
        QVERIFY(QString::fromStdString(refused.error()).toStdString() == refused.error());  // a message is UTF-8
        fs::remove(in.path /
                   "Gr\xF6\xDF"
                   "e.howlmap");  // which Qt cannot name
    }

    // Root may write anywhere, so these run as another user in a child process.
    void whatMayNotBeWrittenStaysAsItIs() {
        if (::geteuid() != 0) QSKIP("needs root to become another user");
        Folder in;
        put(in.file, "old");
        fs::permissions(in.path, fs::perms(0755));
        QVERIFY(as_nobody([&] { return !save_atomically(in.file, "new").has_value(); }));
        ::chown(in.path.c_str(), 65534, 65534);  // now the folder is theirs, but the file may not be written
        QVERIFY(as_nobody([&] {
            const auto saved = save_atomically(in.file, "new");
            return !saved && saved.error().find("you may not write there") != std::string::npos;
        }));
        QVERIFY(as_nobody([] { return !save_atomically("/dev/null", "new").has_value(); }));
        QCOMPARE(bytes_of(in.file), std::string("old"));
        QVERIFY(fs::is_character_file("/dev/null"));
        QCOMPARE(entries(in.path), 1);
    }

    void straysOfTheDeadAreSwept() {
        Folder in;
        put(in.file, "old");
        const pid_t dead = fork_and_wait([] { return true; }).first;
        const auto stray = stray_of(in, dead), alive = stray_of(in, ::getppid());
        put(stray, "half");
        put(alive, "half");
        put(in.path / ".howlmap-something", "not ours");
        sweep_strays(in.file);
        QVERIFY(!fs::exists(stray));
        QVERIFY(fs::exists(alive));
        QVERIFY(fs::exists(in.path / ".howlmap-something"));
        QCOMPARE(bytes_of(in.file), std::string("old"));
    }

  private:
    /// Runs in a child; its process id and whether it said yes.
    template <class Run>
    static std::pair<pid_t, bool> fork_and_wait(Run run) {
        const pid_t child = ::fork();
        if (child == 0) ::_exit(run() ? 0 : 1);
        int status = -1;
        ::waitpid(child, &status, 0);
        return {child, WIFEXITED(status) && WEXITSTATUS(status) == 0};
    }
    template <class Run>
    static bool as_nobody(Run run) {
        return fork_and_wait([&] { return ::setgid(65534) == 0 && ::setuid(65534) == 0 && run(); }).second;
    }
    /// Where a save of the file by that process would leave its stray.
    static fs::path stray_of(const Folder& in, pid_t process) {
        struct Watching : FileOperations {
            std::string name;
            int give_name(int file, const char* path) override {
                name = path;
                return FileOperations::give_name(file, path);
            }
        } watching;
        (void)save_atomically(in.file, "old", watching);
        const std::size_t number = watching.name.rfind('-'), writer = watching.name.rfind('-', number - 1);
        return watching.name.substr(0, writer + 1) + std::to_string(process) + watching.name.substr(number);
    }
};

HOWLMAP_TEST(TestSave)
#include "test_save.moc"
