// SPDX-License-Identifier: GPL-3.0-or-later
// Saving while the process is killed, and on a full disk. HOWLMAP_LONG_TESTS=1 runs the full counts.
#include <signal.h>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QProcess>
#include <QTemporaryDir>
#include <fstream>

#include "core/file/file_operations.h"
#include "core/file/whole_file.h"
#include "core/file/write.h"
#include "tests/support/random.h"
#include "tests/support/registry.h"

using namespace howlmap;
namespace fs = std::filesystem;

namespace {
std::string bytes_on_disk(const fs::path& path) { return read_whole_file(path, 64u << 20).value_or("(not readable)"); }

int entries_of(const fs::path& folder) {
    return static_cast<int>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

/// A file system of 2 MB of its own for the time of a test; `there` is false where this may not be done.
struct SmallDisk {
    QTemporaryDir dir;
    fs::path path = dir.filePath("disk").toStdString();
    bool there;
    explicit SmallDisk(const QByteArray& kind = "tmpfs") {
        fs::create_directory(path);
        there = kind == "tmpfs" ? ::mount("none", path.c_str(), "tmpfs", 0, "size=2m") == 0 : ext4();
    }
    ~SmallDisk() {
        if (there) ::umount2(path.c_str(), MNT_DETACH);
    }

  private:
    bool ext4() const {
        const QString image = dir.filePath("image"), mounted = QString::fromStdString(path.string());
        return succeeds("mkfs.ext4", {"-q", "-O", "^has_journal", image, "2m"}) &&
               succeeds("mount", {"-o", "loop", image, mounted});
    }
    static bool succeeds(const QString& program, const QStringList& arguments) {
        QProcess process;
        process.start(program, arguments);
        return process.waitForFinished() && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
    }
};

/// Takes space until the disk refuses, then gives back about as much as asked.
void fill(const fs::path& folder, std::size_t leave) {
    std::ofstream out(folder / "ballast", std::ios::binary);
    const std::string block(4096, '#');
    while (out.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
    }
    out.close();
    const auto size = fs::file_size(folder / "ballast");
    fs::resize_file(folder / "ballast", size > leave ? size - leave : 0);
}
}  // namespace

class TestSaveUnderStress : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void aKilledSaveLosesNothing_data() {
        QTest::addColumn<int>("size");
        QTest::newRow("10 kB") << 10'000;
        QTest::newRow("400 kB") << 400'000;
        QTest::newRow("5 MB") << 5'000'000;
    }
    void aKilledSaveLosesNothing() {
        QFETCH(int, size);
        const int kills = qEnvironmentVariableIsSet("HOWLMAP_LONG_TESTS") ? 200 : 12;
        const std::string first(static_cast<std::size_t>(size), 'a'), second(static_cast<std::size_t>(size) + 1, 'b');
        QTemporaryDir dir;
        const fs::path folder = dir.path().toStdString(), file = folder / "gig.howlmap";
        QVERIFY(save_atomically(file, first));
        test::Random random(static_cast<std::uint64_t>(size));
        for (int i = 0; i < kills; ++i) {
            const pid_t child = ::fork();
            if (child == 0)
                for (bool swap = false;; swap = !swap) (void)save_atomically(file, swap ? first : second);
            ::usleep(static_cast<useconds_t>(random.whole(500, 30'000)));
            ::kill(child, SIGKILL);
            ::waitpid(child, nullptr, 0);
            const std::string now = bytes_on_disk(file);
            QVERIFY2(now == first || now == second, "lost or mixed");
        }
        sweep_strays(file);
        QCOMPARE(entries_of(folder), 1);
    }

    void aFullDiskLosesNothing_data() {
        QTest::addColumn<QByteArray>("kind");
        QTest::newRow("tmpfs") << QByteArray("tmpfs");
        QTest::newRow("ext4") << QByteArray("ext4");
    }
    void aFullDiskLosesNothing() {
        QFETCH(QByteArray, kind);
        int cases = 0, refused = 0;
        for (const std::size_t size : {1u, 100u, 4'096u, 9'000u, 16'384u, 100'000u, 400'000u, 900'000u}) {
            for (const std::size_t left :
                 {0u, 4'096u, 8'192u, 12'288u, 20'480u, 65'536u, 131'072u, 409'600u, 1'000'000u}) {
                SmallDisk disk(kind);
                if (!disk.there) QSKIP("a small disk cannot be mounted here");
                const fs::path file = disk.path / "gig.howlmap";
                const std::string before(9'000, 'o'), after(size, 'n');
                QVERIFY(save_atomically(file, before));
                const int entries = entries_of(disk.path);
                fill(disk.path, left);
                const auto saved = save_atomically(file, after);
                ++cases;
                if (!saved) {
                    ++refused;
                    QVERIFY2(saved.error().find("the disk is full") != std::string::npos, saved.error().c_str());
                }
                QCOMPARE(bytes_on_disk(file), saved ? after : before);
                QCOMPARE(entries_of(disk.path), entries + 1);  // and the ballast
            }
        }
        QVERIFY(cases >= 70);
        QVERIFY(refused > 10 && refused < cases - 10);  // both sides were met
    }

    void aReadOnlyDiskIsNamed() {
        SmallDisk disk;
        if (!disk.there) QSKIP("a small disk cannot be mounted here");
        const fs::path file = disk.path / "gig.howlmap";
        QVERIFY(save_atomically(file, "old"));
        QVERIFY(::mount("none", disk.path.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, "size=2m") == 0);
        const auto saved = save_atomically(file, "new");
        QVERIFY(!saved);
        QVERIFY2(saved.error().find("the disk is read-only") != std::string::npos, saved.error().c_str());
        QCOMPARE(bytes_on_disk(file), std::string("old"));
    }
};

HOWLMAP_TEST(TestSaveUnderStress)
#include "test_save_under_stress.moc"
