// SPDX-License-Identifier: EPL-2.0
import java.io.File;
import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.codegen.merge.java.JControlModel;
import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Generates the model code: {@code EmfGen GENMODEL PLUGIN=FOLDER...}. Runs without a workspace and without merging, so
 * each run writes the files whole; generated code is never edited by hand and never committed.
 */
public final class EmfGen {
  /** Leaves our own manifest, plugin.xml and build files alone. */
  private static final class NoBuildFiles extends GenModelGeneratorAdapter {
    NoBuildFiles(GeneratorAdapterFactory factory) {
      super(factory);
    }

    @Override
    protected void generateModelManifest(GenModel genModel, Monitor monitor) {}

    @Override
    protected void generateModelModule(GenModel genModel, Monitor monitor) {}

    @Override
    protected void generateModelPluginProperties(GenModel genModel, Monitor monitor) {}

    @Override
    protected void generateModelBuildProperties(GenModel genModel, Monitor monitor) {}
  }

  public static void main(String[] args) throws Exception {
    Resource.Factory.Registry.INSTANCE.getExtensionToFactoryMap().put("*", new EcoreResourceFactoryImpl());
    GenModelPackage.eINSTANCE.eClass();
    GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI, () ->
        new GenModelGeneratorAdapterFactory() {
          @Override
          public Adapter createGenModelAdapter() {
            if (genModelGeneratorAdapter == null) {
              genModelGeneratorAdapter = new NoBuildFiles(this);
            }
            return genModelGeneratorAdapter;
          }
        });
    for (int i = 1; i < args.length; i++) {
      String[] pair = args[i].split("=", 2);
      EcorePlugin.getPlatformResourceMap().put(pair[0], URI.createFileURI(new File(pair[1]).getCanonicalPath() + "/"));
    }
    URI uri = URI.createFileURI(new File(args[0]).getCanonicalPath());
    GenModel genModel = (GenModel) new ResourceSetImpl().getResource(uri, true).getContents().get(0);
    genModel.reconcile();
    genModel.setCanGenerate(true);
    genModel.setCodeFormatting(false);
    genModel.setValidateModel(true);
    Diagnostic problems = genModel.diagnose();
    if (problems.getSeverity() >= Diagnostic.ERROR) {
      System.err.println("EmfGen: " + problems);
      System.exit(1);
    }
    Generator generator = new Generator() {
      private final JControlModel never = new JControlModel();

      @Override
      public JControlModel getJControlModel() {
        return never;
      }
    };
    generator.setInput(genModel);
    Diagnostic result = generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor());
    if (result.getSeverity() >= Diagnostic.ERROR) {
      System.err.println("EmfGen: " + result);
      System.exit(1);
    }
  }
}
